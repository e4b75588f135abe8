import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildClassic } from '../classic.mjs';
import { Host, htmlPage } from './browser.js';
import { root } from './built.js';

/** A library in small: something at once, something on demand, and something on demand that needs what is heavy. */
const LIBRARY: Record<string, string> = {
  'entry.js': `import { note } from './shared.js';
    note('at once');
    document.addEventListener('light', () => import('./light.js').then(({ text }) => note(text)));
    document.addEventListener('heavy', () => import('./matrix.js').then(({ default: value, twice }) => note(value + ' ' + twice(21))));`,
  'shared.js': `export const note = (text) => { document.body.dataset.notes = [document.body.dataset.notes, text].filter(Boolean).join(', '); };`,
  'light.js': `export const text = 'light';`,
  'matrix.js': `import { twice } from './algebra.js'; export { twice }; export default 'heavy';`,
  'algebra.js': `export const twice = (x) => 2 * x; /* a lot of it */`,
};

let host: Host;
let folder: string;

beforeAll(async () => {
  host = await Host.start();
  folder = mkdtempSync(join(tmpdir(), 'astig-classic-'));
  mkdirSync(join(folder, 'out'));
  for (const [name, text] of Object.entries(LIBRARY)) writeFileSync(join(folder, name), text);
  writeFileSync(join(folder, 'page.html'), htmlPage(`<script src="out/small.classic.js"></script>`));
});

afterAll(async () => {
  rmSync(folder, { recursive: true, force: true });
  await host.stop();
});

function buildSmall(): Promise<string[]> {
  const common = { minify: true, target: 'es2022', logLevel: 'silent' };
  return buildClassic({ root: folder, common, plugins: [], entry: 'entry.js', heavy: 'algebra.js', outfile: 'out/small.classic.js' });
}

describe('the classic script', () => {
  it('has everything inside but what is heavy, which it loads from beside it', async () => {
    expect(await buildSmall()).toEqual(['out/small.classic.js', 'out/small.classic.matrix.js']);
    const [small, matrix] = ['small.classic.js', 'small.classic.matrix.js'].map((name) => readFileSync(join(folder, 'out', name), 'utf8'));
    expect(small).toContain('"light"');
    expect(small).not.toContain('2*');
    expect(matrix).toContain('2*');

    const { page, said, asked } = await host.open({ address: pathToFileURL(join(folder, 'page.html')).href });
    const notes = () => page.evaluate(() => document.body.dataset.notes);
    const after = (event: string, text: string) =>
      page.evaluate((name) => document.dispatchEvent(new Event(name)), event).then(() => page.waitForFunction((all) => document.body.dataset.notes === all, {}, text));
    expect(await notes()).toBe('at once');
    await after('light', 'at once, light');
    expect(asked.filter((address) => address.endsWith('.js'))).toHaveLength(1);
    await after('heavy', 'at once, light, heavy 42');
    await after('heavy', 'at once, light, heavy 42, heavy 42');
    expect(said).toEqual([]);
    await page.close();
  });

  it('is refused when what is heavy would come at once', async () => {
    writeFileSync(join(folder, 'shared.js'), `${LIBRARY['shared.js']} export * from './algebra.js';`);
    await expect(buildSmall()).rejects.toThrow('at once');
  });

  it('of the library has no mathjs inside', () => {
    const names = readdirSync(join(root, 'dist')).filter((name) => name.startsWith('astigmatism-elements.classic'));
    expect(names).toContain('astigmatism-elements.classic.js');
    const text = readFileSync(join(root, 'dist/astigmatism-elements.classic.js'), 'utf8');
    expect(text).toContain('astig-cornea');
    // A name that mathjs gives to what every one of its functions is made by.
    expect(readFileSync(join(root, 'dist/core/algebra.js'), 'utf8')).toContain('typed-function');
    expect(text).not.toContain('typed-function');
  });
});
