import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { checkPackage, createPackageFromTarballData } from '@arethetypeswrong/core';
import { publint } from 'publint';
import { formatMessage } from 'publint/utils';
import { beforeAll, describe, expect, it } from 'vitest';
import { packageFile, paths, root } from './built.js';
import { packed } from './pack.js';

/** What is published besides what the sources become. */
const BESIDES = [
  'CHANGELOG.md',
  'LICENSE',
  'README.md',
  'package.json',
  'dist/astigmatism-elements.js',
  'dist/custom-elements.json',
  'dist/vscode.css-custom-data.json',
  'dist/vscode.html-custom-data.json',
  'dist/web-types.json',
  'dist/types/react.d.ts',
  'dist/types/svelte.d.ts',
  'dist/types/vue.d.ts',
];

describe('what is published', () => {
  let files: string[];
  let archive: Uint8Array;

  beforeAll(async () => {
    await packed((pack) => {
      files = pack.files.map(({ path }) => path).sort();
      archive = readFileSync(pack.archive);
    });
  });

  it('is what the sources become, the chunks of the one file, the classic script, and nothing else', () => {
    const chunks = readdirSync(join(root, 'dist/chunks')).map((name) => `dist/chunks/${name}`);
    const classic = readdirSync(join(root, 'dist')).filter((name) => /^astigmatism-elements\.classic\.([\w-]+\.)?js$/.test(name)).map((name) => `dist/${name}`);
    const compiled = ['core', 'components'].flatMap(sources).flatMap((name) => [`dist/${name}.js`, `dist/${name}.d.ts`]);
    expect(compiled.length).toBeGreaterThan(100);
    expect(files).toEqual([...BESIDES, ...classic, ...chunks, ...compiled].sort());
    expect(files).toContain('dist/astigmatism-elements.classic.js');
  });

  it('names only files that are there as having side effects', () => {
    const published = packageFile.sideEffects.filter((name) => name.startsWith('./dist/') && !name.includes('*'));
    expect(published.length).toBeGreaterThan(0);
    for (const name of published) expect(files).toContain(name.slice(2));
  });

  it('is linted without a remark', async () => {
    const { messages } = await publint({ strict: true, pack: { tarball: new Uint8Array(archive).buffer } });
    expect(messages.map((message) => formatMessage(message, packageFile as never))).toEqual([]);
  });

  it('has typings that are right for whoever imports modules', async () => {
    const entrypoints = paths.map(({ path }) => path);
    const result = await checkPackage(createPackageFromTarballData(archive), { entrypoints });
    if (!result.types) throw new Error('The package has no typings.');
    expect(Object.keys(result.entrypoints).sort()).toEqual([...entrypoints].sort());
    // An older or CommonJS program is told by Node itself that this is ESM only.
    const problems = result.problems.filter((problem) => !('resolutionKind' in problem) || /^(node16-esm|bundler)$/.test(problem.resolutionKind));
    expect(problems).toEqual([]);
  });
});

function sources(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .map((name) => `${folder}/${name.replaceAll('\\', '/')}`)
    .filter((name) => name.endsWith('.ts') && !name.endsWith('.d.ts'))
    .map((name) => name.replace(/\.ts$/, ''));
}
