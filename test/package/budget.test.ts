import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import type { Metafile } from 'esbuild';
import { describe, expect, it } from 'vitest';
import { minifyTemplates } from '../minify-templates.mjs';
import { bundleOneFile, settings, sizeOf } from '../one-file.mjs';
import { workerFile } from '../worker-file.mjs';
import { elements, root } from './built.js';

/**
 * What a page may have to load before it can draw for the first time, in bytes after gzip -9: one file with Lit and all,
 * bundled as the published one is. What follows when it is drawn, or when somebody asks for it, is not counted.
 */
const BUDGET = {
  /** Case, cornea, vectors and summary. */
  mainJob: 32_000,
  /** Each further element, on top of the main job. */
  further: 9_000,
  /** The one door of the core: `evaluatePlan`. */
  core: 9_000,
};

const MAIN_JOB = ['case', 'cornea', 'vectors', 'summary'];

const FURTHER = elements.filter((name) => !MAIN_JOB.includes(name));

const defining = (names: readonly string[]): string => names.map((name) => `import './components/${name}/define.ts';`).join('\n');

const bundle = (source: string) => bundleOneFile(root, { name: 'measured', source });

async function sizeOfSource(source: string): Promise<number> {
  return sizeOf(await bundle(source)).gzipped;
}

/** Which sources a page with these imports loads at once, and which it may ever load. */
async function modulesOf(source: string): Promise<{ atOnce: string[]; ever: string[] }> {
  const common = settings(root);
  const { metafile: { outputs } } = await build({
    ...common,
    stdin: { contents: source, resolveDir: root, loader: 'ts' },
    splitting: true,
    outdir: `${root}/never`,
    write: false,
    metafile: true,
    plugins: [workerFile({ root, common }), minifyTemplates({ filter: /[\\/]components[\\/].*\.ts$/ })],
  });
  // What is only named, for its types, adds nothing.
  const inputs = (names: string[]): string[] => [...new Set(names.flatMap((name) => Object.entries(outputs[name]!.inputs).flatMap(([file, { bytesInOutput }]) => (bytesInOutput > 0 ? [file] : []))))];
  const main = Object.keys(outputs).find((name) => outputs[name]!.entryPoint === '<stdin>')!;
  return { atOnce: inputs(staticOutputs(outputs, main)), ever: inputs(Object.keys(outputs)) };
}

function staticOutputs(outputs: Metafile['outputs'], name: string, found: string[] = []): string[] {
  if (found.includes(name)) return found;
  found.push(name);
  for (const { kind, path } of outputs[name]!.imports) if (kind === 'import-statement' && outputs[path]) staticOutputs(outputs, path, found);
  return found;
}

/** Bytes of chunks and of what each of them cannot do without, besides the main file. */
function sizeOfChunks(files: Awaited<ReturnType<typeof bundle>>, names: readonly string[]): number {
  const chunks = files.slice(1).map(({ path, contents }) => ({ path: path.replace(/.*\//, ''), contents: String(contents) }));
  const wanted = new Set(chunks.filter(({ path }) => names.some((name) => path.startsWith(`${name}-`))));
  for (const { contents } of wanted) {
    for (const [, path] of contents.matchAll(/(?:from|import)"\.\/([^"]+)"/g)) for (const chunk of chunks) if (chunk.path === path) wanted.add(chunk);
  }
  return [...wanted].reduce((total, { contents }) => total + gzipSync(contents, { level: 9 }).length, 0);
}

const kilobytes = (bytes: number): string => `${(bytes / 1000).toFixed(2)} kB`;

const mainFiles = await bundle(defining(MAIN_JOB));
const mainJob = sizeOf(mainFiles).gzipped;
const core = await sizeOfSource("export { evaluatePlan } from './core/index.ts';");
const wholeCore = await sizeOfSource("export * from './core/index.ts';");
const further: { what: string; bytes: number; budget: number }[] = [];
for (const name of FURTHER) {
  further.push({ what: `astig-${name} on top`, bytes: (await sizeOfSource(defining([...MAIN_JOB, name]))) - mainJob, budget: BUDGET.further });
}

describe('what a page has to load before it draws', () => {
  const sizes = [{ what: 'the main job', bytes: mainJob, budget: BUDGET.mainJob }, { what: 'evaluatePlan alone', bytes: core, budget: BUDGET.core }, ...further];
  for (const { what, bytes, budget } of sizes) {
    it(`${what}: ${kilobytes(bytes)} of ${kilobytes(budget)}`, () => {
      expect(bytes).toBeGreaterThan(0);
      expect(bytes).toBeLessThanOrEqual(budget);
    });
  }

  it(`all that core/index exports is ${kilobytes(wholeCore)}, for which there is no limit: who bundles takes what he uses`, () => {
    expect(wholeCore).toBeGreaterThan(core);
  });
});

describe('what follows the first drawing of the main job', () => {
  const hands = sizeOfChunks(mainFiles, ['cornea.hands']);
  const pictures = sizeOfChunks(mainFiles, ['pictures']);

  it(`is ${kilobytes(hands)} where the plan can be changed, and ${kilobytes(pictures)} for giving the drawings away, and in no main file`, async () => {
    const { atOnce, ever } = await modulesOf(defining(MAIN_JOB));
    for (const part of ['components/cornea/cornea.hands.ts', 'components/internal/case-moves.ts', 'components/internal/picture/pictures.ts', 'components/internal/source-popover.ts']) {
      expect(ever).toContain(part);
      expect(atOnce).not.toContain(part);
    }
    expect(Math.min(hands, pictures)).toBeGreaterThan(1000);
  });
});

describe('mathjs is loaded by nobody who does not use it', () => {
  const mathjs = (files: readonly string[]): string[] => files.filter((file) => file.includes('node_modules/mathjs/'));

  it('never by the main job', async () => {
    expect(mathjs((await modulesOf(defining(MAIN_JOB))).ever)).toEqual([]);
  });

  it('never by the core', async () => {
    expect(mathjs((await modulesOf("export * from './core/index.ts';")).ever)).toEqual([]);
  });

  it('by no element before it is needed', async () => {
    const { atOnce } = await modulesOf(defining(elements));
    expect(atOnce.length).toBeGreaterThan(50);
    expect(mathjs(atOnce)).toEqual([]);
  });

  it('and would be seen', async () => {
    expect(mathjs((await modulesOf("export * from './core/algebra.ts';")).atOnce).length).toBeGreaterThan(10);
  });
});
