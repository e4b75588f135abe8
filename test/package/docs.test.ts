import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { reference, withReference } from '../manifest/reference.mjs';
import { elements, paths, readJson, root } from './built.js';

const readme = readFileSync(join(root, 'README.md'), 'utf8');
const manifest = readJson<object>('dist/custom-elements.json');

describe('the README', () => {
  it('has the reference that the sources say; if not, run `npm run build && npm run docs`', () => {
    expect(readme).toBe(withReference(readme, manifest));
  });

  it('has a chapter of the reference for every element', () => {
    for (const name of elements) expect(reference(manifest)).toContain(`#### \`<astig-${name}>\``);
  });

  it('names every element in its overview', () => {
    for (const name of elements) expect(readme).toContain(`| \`<astig-${name}>\` |`);
  });

  it('imports only what can be imported', () => {
    const imported = [...readme.matchAll(/(?:from|import) '(astigmatism-elements[^']*)'/g)].map(([, specifier]) => specifier!);
    expect(imported.length).toBeGreaterThan(5);
    const known = paths.map(({ specifier }) => specifier);
    for (const specifier of imported) expect(known).toContain(specifier);
  });
});
