/** What page and worker say to each other; types alone. */
import type { JudgeOptions, OutcomeGroup, OutcomeSummary, OutcomeTable, OwnAdvice, RefusedRow, Said, Grouping, Mapping, OutcomeColumn } from '../../core/outcomes.js';
import type { Astigmatism, EyeSide } from '../../core/numbers.js';
import type { ExportWords } from './outcomes.export.js';

/** One eye as a page may give it: values by the names of the columns. */
export type OutcomeRow = Partial<Record<OutcomeColumn, string | number | null>>;

export type Ask =
  | { kind: 'read'; data: string | readonly OutcomeRow[]; mapping: Mapping; judge: JudgeOptions }
  | { kind: 'list'; from: number; count: number }
  /** English is that of the core. */
  | { kind: 'export'; words?: ExportWords };

/** Series of which figures are given. */
export const SERIES = ['before', 'after', 'induced', 'atIncision', 'remaining', 'error'] as const;
export type Series = (typeof SERIES)[number];

/** Series that are drawn; each eye has two numbers of each, one series after the other. */
export const DRAWN = ['before', 'after', 'induced'] as const;
export type Drawn = (typeof DRAWN)[number];

export interface GroupFigures extends Pick<OutcomeGroup, 'key'> {
  n: number;
  centroid: { x: number; y: number } | null;
  meanMagnitude: number | null;
}

/** What is known of a table when it has been read. The table itself stays where it was read. */
export interface Findings extends Pick<OutcomeTable, 'headings' | 'problems' | 'notes' | 'rows'> {
  /** The first rows, cells as given. */
  preview: (readonly string[])[];
  counted: number;
  /** Rows that are not counted, by the first thing that is wrong with each; the first of them in full. */
  refused: { total: number; reasons: { column: OutcomeColumn | null; reason: Said; rows: number }[]; first: RefusedRow[] };
  points: Record<Drawn, Float64Array<ArrayBuffer>>;
  summaries: Record<Series, OutcomeSummary>;
  groups: Record<Grouping, GroupFigures[]>;
  own: OwnAdvice;
}

/** One line of the list. */
export interface Listed {
  line: number;
  label: string | null;
  eye: EyeSide;
  before: Astigmatism;
  after: Astigmatism;
  induced: Astigmatism;
  flattening: number | null;
}

export type Reply = { kind: 'read'; findings: Findings } | { kind: 'list'; listed: Listed[] } | { kind: 'export'; text: string };

export type ToDesk = { number: number; ask: Ask } | { cancel: number };
export type FromDesk =
  | { started: true }
  | { number: number; share: number }
  | { number: number; reply: Reply }
  | { number: number; problem: string };
