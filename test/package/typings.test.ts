import { execFile } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { NAME, root } from './built.js';
import { packed } from './pack.js';
import { REACT, SVELTE, TYPESCRIPT, VUE } from './typings-pages.js';

const require = createRequire(import.meta.url);

/** Inside the repository, so that frameworks are found above it; the package itself is what would be published. */
const place = join(root, 'test/out/typings');

const CONFIG = {
  compilerOptions: {
    target: 'es2022',
    module: 'esnext',
    moduleResolution: 'bundler',
    jsx: 'react-jsx',
    strict: true,
    noEmit: true,
    verbatimModuleSyntax: true,
    lib: ['es2023', 'dom', 'dom.iterable'],
    types: [],
  },
};

beforeAll(async () => {
  rmSync(place, { recursive: true, force: true });
  await packed(({ files }) => {
    for (const { path } of files) cpSync(join(root, path), join(place, 'node_modules', NAME, path));
  });
});

afterAll(() => rmSync(place, { recursive: true, force: true }));

describe.concurrent('typings let pass what is right and nothing else', () => {
  it('TypeScript, every file of the package checked', async () => {
    expect(await wrongLines('page.ts', TYPESCRIPT, ['typescript/bin/tsc', '-p', '.'], { skipLibCheck: false, module: 'nodenext', moduleResolution: 'nodenext' })).toEqual(marked(TYPESCRIPT));
  });

  it('React 19', async () => {
    expect(await wrongLines('page.tsx', REACT, ['typescript/bin/tsc', '-p', '.'])).toEqual(marked(REACT));
  });

  it('Vue', async () => {
    expect(await wrongLines('Page.vue', VUE, ['vue-tsc/bin/vue-tsc.js', '-p', '.'])).toEqual(marked(VUE));
  });

  it('Svelte 5', async () => {
    expect(await wrongLines('Page.svelte', SVELTE, ['svelte-check/bin/svelte-check', '--tsconfig', './tsconfig.json', '--output', 'machine'])).toEqual(marked(SVELTE));
  });
});

/** Lines in which a checker finds an error, as text. */
async function wrongLines(name: string, source: string, [tool, ...args]: string[], options = {}): Promise<string[]> {
  const folder = join(place, name);
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, name), source);
  const compilerOptions = { skipLibCheck: true, ...CONFIG.compilerOptions, ...options };
  writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify({ compilerOptions, include: [name] }));
  const output = await new Promise<string>((resolve) => {
    execFile(process.execPath, [script(tool!), ...args], { cwd: folder }, (_, stdout, stderr) => resolve(`${stdout}\n${stderr}`));
  });
  const lines = source.split('\n');
  const found = output.split('\n').flatMap((text) => {
    const [, file, number] = /^(?:\d+ ERROR )?"?([^\s"(:]+)"?[ (:](\d+)[,:]\d+/.exec(text) ?? [];
    if (!file) return /error/i.test(text) && !/COMPLETED|START/.test(text) ? [text] : [];
    // An error in a file of the package itself is told as it is.
    return file.endsWith(name) ? [lines[Number(number) - 1]!] : [text];
  });
  return [...new Set(found)];
}

/** Lines that are wrong on purpose. */
function marked(source: string): string[] {
  const lines = source.split('\n').filter((line) => /wrong:/.test(line));
  expect(lines.length).toBeGreaterThan(2);
  return lines;
}

/** A package's command, which few of them export. */
function script(tool: string): string {
  const folders = require.resolve.paths(tool)!.map((folder) => join(folder, tool));
  return folders.find((path) => existsSync(path))!;
}
