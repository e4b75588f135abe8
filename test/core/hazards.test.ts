/** The list of hazards in DEVELOPERS.md names tests; they must exist, or the list promises what nobody shows. */
import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const guide = readFileSync(new URL('../../DEVELOPERS.md', import.meta.url), 'utf8');
const section = /\n## Hazards\n(.*?)(?=\n## )/s.exec(guide)?.[1] ?? '';

/** As written: a file in backquotes, then titles in quotation marks, in the cell of the tests. */
const named = [...section.matchAll(/^\|.*\| *([^|]*) *\|$/gm)].flatMap(([, cell]) =>
  [...cell!.matchAll(/`([\w/-]+)`((?: “[^”]+”,?)+)/g)].flatMap(([, file, titles]) => [...titles!.matchAll(/“([^”]+)”/g)].map(([, title]) => [file!, title!] as const)),
);

describe('the list of hazards', () => {
  test('names tests for each hazard', () => {
    const rows = section.split('\n').filter((line) => /^\| \*\*/.test(line));
    expect(rows.length).toBeGreaterThanOrEqual(8);
    for (const row of rows) expect(row, row.slice(0, 60)).toMatch(/`[\w/-]+` “[^”]+”/);
  });

  test.each(named)('%s has “%s”', (file, title) => {
    const [folder, name] = file.split('/') as [string, string];
    const path = readdirSync(new URL(`../${folder}/`, import.meta.url)).find((one) => one === `${name}.test.ts`);
    expect(path, file).toBeDefined();
    const source = readFileSync(new URL(`../${folder}/${path}`, import.meta.url), 'utf8');
    expect(source.includes(title), title).toBe(true);
  });
});
