import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { wrongArrows } from './arrows.js';

const root = fileURLToPath(new URL('../..', import.meta.url));

describe('imports point one way', () => {
  const files = ['core', 'components'].flatMap(sources);

  it('finds files to look at', () => {
    expect(files.length).toBeGreaterThan(0);
  });

  it.each(files)('%s', (file) => {
    const { importedFiles } = ts.preProcessFile(readFileSync(join(root, file), 'utf8'), true, true);
    expect(wrongArrows(file, importedFiles.map(({ fileName }) => fileName))).toEqual([]);
  });
});

describe('a wrong arrow is seen', () => {
  it.each([
    ['core/plan.ts', '../components/internal/paths.js'],
    ['core/plan.ts', './options.js'],
    ['core/plan.ts', './index.js'],
    ['core/incision.ts', './plan.js'],
    ['core/spread.ts', './index.js'],
    ['core/algebra.ts', './spread.js'],
    ['core/types.ts', './algebra.js'],
    ['core/spread.ts', 'mathjs'],
    ['core/spread.ts', 'mathjs/number'],
    ['core/outcomes-table.ts', 'papaparse'],
    ['components/internal/paths.ts', 'papaparse'],
    ['core/spread.ts', 'd3-array'],
    ['core/spread.ts', 'lit'],
    ['core/spread.ts', 'node:fs'],
    ['core/spread.ts', '../test/fixtures/eyes.js'],
    ['components/internal/paths.ts', '../astig-cornea/astig-cornea.js'],
    ['components/internal/paths.ts', '../define.js'],
    ['components/internal/paths.ts', 'mathjs'],
    ['components/internal/paths.ts', 'd3'],
    ['components/astig-cornea/astig-cornea.ts', '../astig-vectors/astig-vectors.parts.js'],
    ['components/astig-cornea/astig-cornea.ts', '../astig-vectors/astig-vectors.js'],
    ['components/astig-cornea/astig-cornea.ts', '../index.js'],
    ['components/astig-cornea/astig-cornea.ts', 'd3-path'],
    ['components/astig-cornea/astig-cornea.ts', 'lodash'],
    ['components/astig-cornea/astig-cornea.ts', '../../stories/cornea.stories.js'],
    ['components/define.ts', '../stories/cornea.stories.js'],
    ['components/define.ts', '../dist/core/index.js'],
  ])('%s → %s', (file, specifier) => {
    expect(wrongArrows(file, [specifier])).toHaveLength(1);
  });

  it('names only the wrong one among many', () => {
    expect(wrongArrows('core/incision.ts', ['./types.js', './plan.js', './check.js'])).toEqual([
      'core/incision.ts imports ./plan.js: core is below plan',
    ]);
  });
});

describe('a right arrow is let through', () => {
  it.each([
    ['core/algebra.ts', 'mathjs'],
    ['core/algebra.ts', './types.js'],
    ['core/outcomes-csv.ts', 'papaparse'],
    ['core/spread.ts', './algebra.js'],
    ['core/plan.ts', './incision.js'],
    ['core/options.ts', './plan.js'],
    ['core/index.ts', './options.js'],
    ['components/internal/paths.ts', 'd3-path'],
    ['components/internal/context.ts', '@lit/context'],
    ['components/internal/context.ts', '../../core/plan.js'],
    ['components/astig-cornea/astig-cornea.parts.ts', 'd3-array'],
    ['components/astig-cornea/astig-cornea.ts', './astig-cornea.parts.js'],
    ['components/astig-cornea/astig-cornea.ts', '../internal/paths.js'],
    ['components/astig-cornea/astig-cornea.ts', 'lit/directives/class-map.js'],
    ['components/astig-cornea/define.ts', './astig-cornea.js'],
    ['components/define.ts', './astig-cornea/define.js'],
    ['components/index.ts', './astig-vectors/astig-vectors.js'],
  ])('%s → %s', (file, specifier) => {
    expect(wrongArrows(file, [specifier])).toEqual([]);
  });
});

describe('every form of import is read', () => {
  it.each([
    `import { a } from './x.js';`,
    `import './x.js';`,
    `import type { A } from './x.js';`,
    `export * from './x.js';`,
    `export { a } from './x.js';`,
    `const x = () => import('./x.js');`,
    `let x: import('./x.js').A;`,
  ])('%s', (source) => {
    expect(ts.preProcessFile(source, true, true).importedFiles.map(({ fileName }) => fileName)).toEqual(['./x.js']);
  });
});

function sources(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .map((name) => `${folder}/${name.replaceAll('\\', '/')}`)
    .filter((name) => name.endsWith('.ts') && !name.endsWith('.d.ts'));
}
