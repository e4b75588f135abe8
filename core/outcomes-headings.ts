import { RefusedValue } from './check.js';
import { said } from './outcomes-text.js';
import { OUTCOME_COLUMNS } from './outcomes-types.js';
import type { Heading, OutcomeColumn, Said } from './outcomes-types.js';
import { ideasIn, unitIn } from './outcomes-words.js';
import type { Idea } from './outcomes-words.js';

/** The user's own matching: number (from 0) or text of the heading by column; `null` for a column that there is not. */
export type Mapping = Partial<Record<OutcomeColumn, number | string | null>>;

type Match = Pick<Heading, 'column' | 'why'>;

const NONE: Match = { column: null, why: null };

/** What each heading was taken for. Two for one column are taken for none. */
export function matchHeadings(texts: readonly string[], mapping: Mapping = {}): { headings: Heading[]; problems: Said[] } {
  const chosen = new Map(Object.entries(mapping).map(([column, place]) => [known(column), placeIn(texts, column, place)] as const));
  const headings: Heading[] = texts.map((text, index) => {
    const users = [...chosen].find(([, place]) => place === index)?.[0];
    if (users) return { index, text, column: users, unit: unitIn(text), by: 'user', why: null };
    const { column, why } = columnOf(text);
    const free = column !== null && !chosen.has(column);
    return { index, text, column: free ? column : null, unit: unitIn(text), by: free ? 'words' : null, why: free || !column ? why : null };
  });
  return { headings, problems: partTwins(headings) };
}

/** Longer texts are no headings. */
const LONGEST = 200;

/** How many columns the words in these cells name: cells with numbers name none. */
export function columnsNamed(texts: readonly string[]): number {
  return new Set(texts.filter(({ length }) => length <= LONGEST).map((text) => columnOf(text).column).filter((column) => column !== null)).size;
}

function partTwins(headings: Heading[]): Said[] {
  return OUTCOME_COLUMNS.flatMap((column) => {
    const same = headings.filter((heading) => heading.column === column);
    if (same.length < 2) return [];
    const why = said('duplicate', { column, headings: same.map(({ text, index }) => text || `${index + 1}`).join(', ') });
    for (const heading of same) Object.assign(heading, { column: null, by: null, why });
    return [why];
  });
}

function known(column: string): OutcomeColumn {
  if ((OUTCOME_COLUMNS as readonly string[]).includes(column)) return column as OutcomeColumn;
  throw new RefusedValue('mapping', column, `a mapping of ${OUTCOME_COLUMNS.join(', ')}`);
}

function placeIn(texts: readonly string[], column: string, place: number | string | null | undefined): number | null {
  if (place === null || place === undefined) return null;
  const index = typeof place === 'string' ? texts.indexOf(place) : place;
  if (Number.isInteger(index) && index >= 0 && index < texts.length) return index;
  throw new RefusedValue(`mapping.${column}`, place, `a heading of the table, or its number from 0 to ${texts.length - 1}`);
}

/** The column that a heading names. What could mean two things is not guessed at: a wrong meridian could hurt someone. */
function columnOf(text: string): Match {
  const named = OUTCOME_COLUMNS.find((column) => column.toLowerCase() === text.trim().toLowerCase());
  if (named) return { column: named, why: null };
  const ideas = ideasIn(text);
  const has = (...wanted: Idea[]): boolean => wanted.some((idea) => ideas.has(idea));
  const is = (column: OutcomeColumn): Match => ({ column, why: null });
  if (has('arc')) {
    if (has('method')) return is('arcMethod');
    if (has('count')) return is('arcCount');
    if (has('length', 'width')) return is('arcLength');
    return has('site', 'meridian', 'axis') ? is('arcSite') : NONE;
  }
  if (has('lens')) {
    if (has('meridian', 'axis')) return is('lensMeridian');
    return has('magnitude') ? is('lensCylinder') : NONE;
  }
  if (has('incision')) {
    if (has('width', 'length')) return is('incisionWidth');
    return has('site', 'meridian', 'axis') ? is('incisionSite') : NONE;
  }
  if (has('planned', 'before', 'after') || has('flat', 'steep', 'first', 'second', 'magnitude', 'meridian')) return corneal(has);
  if (has('person')) return { column: null, why: said('person') };
  if (has('label')) return is('label');
  if (has('age')) return is('age');
  return has('eye') ? is('eye') : NONE;
}

function corneal(has: (...ideas: Idea[]) => boolean): Match {
  const time = has('planned') ? 'predicted' : has('before') === has('after') ? null : has('before') ? 'Before' : 'After';
  const match = (kind: 'flat' | 'steep' | 'magnitude' | 'meridian', guessed = false): Match => {
    if (time === null) return { column: null, why: said('noTime') };
    if (time === 'predicted') return kind === 'magnitude' ? { column: 'predictedMagnitude', why: null } : kind === 'meridian' ? { column: 'predictedMeridian', why: null } : NONE;
    const column = `${kind}${time}` as const;
    return { column, why: guessed ? said('guess', { column }) : null };
  };
  const numbered = !has('flat', 'steep') && has('first') !== has('second');
  const flat = has('flat') || (numbered && has('first'));
  const steep = has('steep') || (numbered && has('second'));
  if (has('meridian', 'axis')) {
    if (flat) return { column: null, why: said('flatMeridian') };
    return has('meridian') || steep ? match('meridian', numbered) : { column: null, why: said('axisUnclear') };
  }
  if (has('magnitude') || (time === 'predicted' && has('rest'))) return match('magnitude');
  return flat === steep ? NONE : match(flat ? 'flat' : 'steep', numbered);
}
