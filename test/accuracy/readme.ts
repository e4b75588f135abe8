/** What the README says on accuracy, between its two marks. */
import { markdown } from './print.js';
import { BY_SECOND_METHOD, CHECKED, NOTES, added, checkedTable, setByTable, takenOver, workedTable, type Table } from './tables.js';

const BEGIN = '<!-- Accuracy: written by `npm run accuracy -- --write` from the published figures in test/fixtures. -->';
const END = '<!-- End of the accuracy. -->';

const count = (rows: readonly { values: readonly unknown[] }[]): number => rows.reduce((sum, { values }) => sum + values.length, 0);
const table = ({ head, rows, figures }: Table): string => markdown(head, rows, figures);

export function summary(): string {
  const beyond = CHECKED.reduce((sum, row) => sum + row.beyond.length, 0);
  const recalled = count(CHECKED.filter(({ known }) => known === 'memory'));
  const sources = new Set(CHECKED.map(({ source }) => source)).size;
  return `${count(CHECKED)} values from ${sources} sources, ${recalled} of them from memory; ${beyond} lie further off than rounding in print explains, each with a note below.`;
}

export function accuracy(): string {
  return [
    'The optics and the statistics are compared with published values; nothing here is clinically validated. Figures that a constant of the model was set by, or taken over from, are listed apart and are no check.',
    `${summary()} What is not marked was read in a public copy. *Rounding* is half of the last digit that the source prints, *within* whether every error is that small.`,
    table(checkedTable()),
    NOTES.map((note, index) => `${index + 1}. ${note[0]!.toUpperCase()}${note.slice(1)}.`).join('\n'),
    `<details><summary>Worked out by a second method: ${count(BY_SECOND_METHOD)} values</summary>`,
    'Formulae that were read or recalled; no source prints these figures. *Rounding* is the precision to which they were worked out.',
    table(workedTable()),
    '</details>',
    '#### No check: what the model was set by',
    'The constants were chosen with these figures in view or taken over from them, so the model is consistent with them and validated on nothing. They do not all agree with each other, as on the nasal entry, so not all can be met. The rest of its constants is assumed or common practice, as `CONSTANTS` says of each.',
    `<details><summary>${setByTable().rows.length} figures by which the model was set</summary>`,
    table(setByTable()),
    `Added in this table: ${added().join('; ')}.`,
    '</details>',
    `Compared in the tests and counted nowhere above: ${takenOver().join('; ')}.`,
  ].join('\n\n');
}

/** The file with the accuracy between its two marks, which stay. */
export function withAccuracy(readme: string): string {
  const [from, to] = [readme.indexOf(BEGIN), readme.indexOf(END)];
  if (from < 0 || to < from) throw new Error('README.md has lost the marks between which the accuracy stands.');
  return `${readme.slice(0, from + BEGIN.length)}\n\n${accuracy()}\n\n${readme.slice(to)}`;
}
