import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { accuracy, withAccuracy } from '../accuracy/readme.js';
import { CHECKED, checkedTable } from '../accuracy/tables.js';
import { root } from './built.js';

const path = join(root, 'README.md');
const readme = readFileSync(path, 'utf8');

describe('the accuracy in the README', () => {
  it('is what the core calculates now; if not, run `npm run accuracy -- --write`', () => {
    expect(readme).toBe(withAccuracy(readme));
  });

  it('is made anew when a figure in it is another', () => {
    const stale = readme.replace('| 0.0025 |', '| 0.0024 |');
    expect(stale).not.toBe(readme);
    expect(withAccuracy(stale)).toBe(readme);
  });

  it('stands between two marks, without which nothing is written', () => {
    expect(() => withAccuracy(readme.replace('<!-- End of the accuracy. -->', ''))).toThrow(/has lost the marks/);
  });

  it('says what it is not, and marks what is from memory', () => {
    expect(accuracy()).toContain('nothing here is clinically validated');
    const recalled = checkedTable().rows.filter((_, index) => CHECKED[index]!.known === 'memory');
    expect(recalled.length).toBeGreaterThan(5);
    for (const cells of recalled) expect(accuracy()).toContain(`| ${cells.slice(0, 2).join(' | ')} |`);
    for (const [source] of recalled) expect(source).toMatch(/\(\*\*from memory\*\*\)$/);
    expect(accuracy()).toMatch(/\| Liou & Brennan 1997 \(all else of it \*\*from memory\*\*\) \|/);
  });

  it('is printed by the command, which leaves the README alone', () => {
    const { status, stdout } = spawnSync(process.execPath, [join(root, 'test/accuracy.mjs')], { encoding: 'utf8' });
    expect(status).toBe(0);
    expect(stdout).toMatch(/^Published values\n/);
    expect(stdout).toContain('Schematic eyes, value by value');
    expect(readFileSync(path, 'utf8')).toBe(readme);
  });
});
