import { posix } from 'node:path';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';
import { bundleOneFile } from '../one-file.mjs';
import type { BundledFile } from '../one-file.mjs';

describe('the one file', () => {
  let files: BundledFile[] = [];
  const text = ({ contents }: BundledFile): string => (typeof contents === 'string' ? contents : new TextDecoder().decode(contents));

  beforeAll(async () => {
    files = await bundleOneFile(fileURLToPath(new URL('../..', import.meta.url)), { name: 'all', source: "import './components/define.ts';" });
  }, 180_000);

  it('comes first and needs no other to begin with', () => {
    expect(files[0]!.path).toBe('all.js');
    const main = text(files[0]!);
    expect(main.includes('"astig-cornea"')).toBe(true);
    // `import(` and `import.meta` wait until they are needed.
    expect(main.match(/(?:^|[;}])import(?![(.])[^;]{0,80}/)?.[0]).toBeUndefined();
    expect(text(files.find(({ path }) => path.includes('/de-'))!).match(/(?:^|[;}])(?:import|export)/)).not.toBeNull();
  });

  it('leads to files that are there, as each of them does', () => {
    const paths = files.map(({ path }) => path);
    const named = files.flatMap((file) => [...text(file).matchAll(/"(\.{1,2}\/[\w./-]+\.js)"/g)].map(([, name]) => posix.join(posix.dirname(file.path), name!)));
    expect(named.filter((path) => !paths.includes(path))).toEqual([]);
    // Sources, pictures, five languages and the worker of the blur at the least.
    for (const part of ['source-popover', 'picture-bar', 'ar', 'de', 'es', 'fr', 'zh', 'blur-worker', 'blur-here']) {
      expect(named.some((path) => posix.basename(path).startsWith(`${part}-`)), part).toBe(true);
    }
  });
});
