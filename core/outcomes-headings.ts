import { RefusedValue } from './check.js';
import { said } from './outcomes-text.js';
import { OUTCOME_COLUMNS } from './outcomes-types.js';
import type { Heading, OutcomeColumn, Said } from './outcomes-types.js';
import { columnOf, unitAgainst } from './outcomes-sense.js';
import { unitIn } from './outcomes-words.js';

/** The user's own matching: number (from 0) or text of the heading by column; `null` for a column that there is not. */
export type Mapping = Partial<Record<OutcomeColumn, number | string | null>>;

/** What each heading was taken for. Two for one column are taken for none. */
export function matchHeadings(texts: readonly string[], mapping: Mapping = {}): { headings: Heading[]; problems: Said[] } {
  const chosen = new Map(Object.entries(mapping).map(([column, place]) => [known(column), placeIn(texts, column, place)] as const));
  const headings: Heading[] = texts.map((text, index) => {
    const users = [...chosen].find(([, place]) => place === index)?.[0];
    if (users) return { index, text, column: users, unit: unitIn(text), by: 'user', why: unitAgainst(text, users) };
    const { column, why } = columnOf(text);
    const free = column !== null && !chosen.has(column);
    return { index, text, column: free ? column : null, unit: unitIn(text), by: free ? 'words' : null, why: free || !column ? why : null };
  });
  return { headings, problems: partTwins(headings) };
}

/** Longer texts are no headings. */
const LONGEST = 200;

/** How many columns the words in these cells name, with those that have to be asked about: cells with numbers name none. */
export function columnsNamed(texts: readonly string[]): number {
  const named = texts.filter(({ length }) => length <= LONGEST).map(columnOf);
  return new Set(named.map(({ column }) => column).filter((column) => column !== null)).size + named.filter(({ column, why }) => column === null && why !== null).length;
}

function partTwins(headings: Heading[]): Said[] {
  return OUTCOME_COLUMNS.flatMap((column) => {
    const same = headings.filter((heading) => heading.column === column);
    if (same.length < 2) return [];
    const why = said('duplicate', { column, headings: same.map(({ text }) => text).join(', ') });
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
