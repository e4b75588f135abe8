import { fromVector, toVector } from '../../core/numbers.js';
import type { Vector } from '../../core/numbers.js';
import { OUTCOME_COLUMNS, exportTable, eyeResult, groupsOf, ownFigures, readingTable, summarise, vectorsOf } from '../../core/outcomes.js';
import type { EyeResult, Grouping, JudgeOptions, OutcomeTable, RefusedRow } from '../../core/outcomes.js';
import { nextTask } from '../internal/worker/next-task.js';
import { exportIn } from './outcomes.export.js';
import { DRAWN, SERIES } from './outcomes.messages.js';
import type { Ask, Findings, FromDesk, GroupFigures, Listed, OutcomeRow, Reply, Series, ToDesk } from './outcomes.messages.js';

/** How much of the work is done when the text has been read, and when each eye has been judged. */
const READ = 0.6;
const JUDGED = 0.85;

/** Eyes that are judged in one step: about 3 ms. */
const AT_ONCE = 1000;

const SHOWN = { preview: 5, refused: 100 } as const;

/** Reads tables and answers what is asked of them, in the worker or in the page, by turns of `turn` ms. */
export function openDesk(turn: number, post: (message: FromDesk, transfer?: Transferable[]) => void): (message: ToDesk) => void {
  const desk = new Desk();
  let cancelled = -1;
  return (message) => {
    if ('cancel' in message) {
      cancelled = message.cancel;
      return;
    }
    const { number, ask } = message;
    const steps = desk.answer(ask);
    const work = (): void => {
      if (number <= cancelled) return;
      const end = performance.now() + turn;
      try {
        for (;;) {
          const { done, value } = steps.next();
          if (done) return post({ number, reply: value }, value.kind === 'read' ? DRAWN.map((name) => value.findings.points[name].buffer) : []);
          if (performance.now() < end) continue;
          post({ number, share: value });
          return nextTask(work);
        }
      } catch (error) {
        post({ number, problem: (error as Error).message });
      }
    };
    nextTask(work);
  };
}

class Desk {
  #table: OutcomeTable | null = null;
  #results: EyeResult[] = [];
  #judge: JudgeOptions = {};

  *answer(ask: Ask): Generator<number, Reply, undefined> {
    if (ask.kind === 'list') return { kind: 'list', listed: this.#results.slice(ask.from, ask.from + ask.count).map(listed) };
    if (ask.kind === 'export') return { kind: 'export', text: this.#table ? exportTable(this.#table, { ...this.#judge, ...(ask.words && exportIn(ask.words)) }) : '' };
    const table = yield* read(ask);
    const results: EyeResult[] = [];
    for (const record of table.records) {
      results.push(eyeResult(record, ask.judge));
      if (results.length % AT_ONCE === 0) yield READ + ((JUDGED - READ) * results.length) / table.records.length;
    }
    const findings = yield* found(table, results);
    // Only now, so that who cancels keeps what was there before.
    this.#table = table;
    this.#results = results;
    this.#judge = ask.judge;
    return { kind: 'read', findings };
  }
}

function* read({ data, mapping }: Extract<Ask, { kind: 'read' }>): Generator<number, OutcomeTable, undefined> {
  const reading = readingTable(typeof data === 'string' ? data : textOf(data), { mapping });
  for (;;) {
    const { done, value } = reading.next();
    if (done) return value;
    yield READ * value.share;
  }
}

/** Rows of a page as a text, so that they are checked as strictly as any other. */
function textOf(rows: readonly OutcomeRow[]): string {
  const cell = (value: string | number | null | undefined): string => `"${String(value ?? '').replaceAll('"', '""')}"`;
  const columns = OUTCOME_COLUMNS.filter((column) => rows.some((row) => row[column] !== undefined && row[column] !== null));
  return [columns.join('\t'), ...rows.map((row) => columns.map((column) => cell(row[column])).join('\t'))].join('\n');
}

function* found(table: OutcomeTable, results: EyeResult[]): Generator<number, Findings, undefined> {
  const summaries: Partial<Findings['summaries']> = {};
  for (const [index, series] of SERIES.entries()) {
    summaries[series] = summarise(seriesOf(results, series));
    yield JUDGED + ((1 - JUDGED) * (index + 1)) / (SERIES.length + 1);
  }
  const groups = (by: Grouping): GroupFigures[] => groupsOf(results, by).map((group) => {
    const { n, centroid, meanMagnitude } = summarise(vectorsOf(group.results, 'atIncision'));
    return { key: group.key, n, centroid, meanMagnitude };
  });
  return {
    headings: table.headings, problems: table.problems, notes: table.notes, rows: table.rows, counted: results.length,
    preview: previewOf(table),
    refused: refusedOf(table),
    points: Object.fromEntries(DRAWN.map((name) => [name, flat(seriesOf(results, name))])) as Findings['points'],
    summaries: summaries as Findings['summaries'],
    groups: { width: groups('width'), site: groups('site'), arcs: groups('arcs') },
    own: ownFigures(table.records),
  };
}

function seriesOf(results: readonly EyeResult[], series: Series): Vector[] {
  if (series === 'before' || series === 'after') return results.map(({ record }) => toVector(record[series]));
  return vectorsOf(results, series);
}

/** The first rows; none whose cells may stand under a wrong heading, for one of them may be a name. */
function previewOf({ headings, cells, refused }: OutcomeTable): Findings['preview'] {
  const whole = refused.slice(0, SHOWN.refused).filter((row) => row.cells.length === headings.length);
  return [...cells.slice(0, SHOWN.preview), ...whole.map((row) => row.cells)].slice(0, SHOWN.preview);
}

function refusedOf({ headings, refused }: OutcomeTable): Findings['refused'] {
  const reasons = new Map<string, Findings['refused']['reasons'][number]>();
  for (const { faults } of refused) {
    const { reason, column } = faults[0]!;
    const known = reasons.get(`${reason.id} ${column}`);
    if (known) known.rows += 1;
    else reasons.set(`${reason.id} ${column}`, { column, reason, rows: 1 });
  }
  const unread = headings.some(({ column }) => column === null);
  // A row as a whole would be quoted with what was not read of it.
  const shown = (row: RefusedRow): RefusedRow => (unread ? { ...row, cells: [], faults: row.faults.map((fault) => (fault.column ? fault : { ...fault, value: '' })) } : row);
  return { total: refused.length, reasons: [...reasons.values()].sort((a, b) => b.rows - a.rows), first: refused.slice(0, SHOWN.refused).map(shown) };
}

function flat(vectors: readonly Vector[]): Float64Array<ArrayBuffer> {
  const points = new Float64Array(2 * vectors.length);
  vectors.forEach(({ x, y }, index) => points.set([x, y], 2 * index));
  return points;
}

function listed({ record: { line, label, eye, before, after }, induced, incision }: EyeResult): Listed {
  return { line, label, eye, before, after, induced: fromVector(induced), flattening: incision?.flattening ?? null };
}
