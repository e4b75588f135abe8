/** `npm run build`: dist/ from scratch, and the size of what a page would load. */
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { minifyTemplates } from './minify-templates.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const dist = join(root, 'dist');
const common = {
  absWorkingDir: root,
  bundle: true,
  format: 'esm',
  target: 'es2022',
  minify: true,
  legalComments: 'none',
  charset: 'utf8',
  tsconfig: join(root, 'tsconfig.json'),
  logLevel: 'warning',
};

rmSync(dist, { recursive: true, force: true });
const compiler = createRequire(import.meta.url).resolve('typescript/bin/tsc');
const { status } = spawnSync(process.execPath, [compiler, '-p', 'test/tsconfig.build.json'], { cwd: root, stdio: 'inherit' });
if (status !== 0) process.exit(status ?? 1);

// mathjs needs a bundler, and nobody should have to own one: the file that uses it carries it along.
const algebra = join(root, 'core/algebra.ts');
if (existsSync(algebra)) await build({ ...common, entryPoints: [algebra], outfile: join(dist, 'core/algebra.js') });

// One file for a page without a bundler. What few readers ask for (sources, other languages) comes when they do.
await build({
  ...common,
  entryPoints: { 'astigmatism-elements': join(root, 'components/define.ts') },
  outdir: dist,
  splitting: true,
  chunkNames: 'chunks/[name]-[hash]',
  plugins: [minifyTemplates({ filter: /[\\/]components[\\/].*\.ts$/ })],
});

const folders = readdirSync(join(dist, 'components'), { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && entry.name !== 'internal')
  .map((entry) => entry.name);
const entries = [
  'astigmatism-elements.js',
  'components/index.js',
  'components/define.js',
  ...folders.flatMap((name) => [`components/${name}/${name}.js`, `components/${name}/define.js`]),
  'core/index.js',
  'core/algebra.js',
].filter((name) => existsSync(join(dist, name)));

// An entry's size is what a bundler would make of it alone, Lit and all; the one file is that already.
console.log(`${'minified'.padStart(10)} ${'gzip -9'.padStart(10)}`);
for (const entry of entries) {
  const { outputFiles } = await build({ ...common, entryPoints: [join(dist, entry)], write: false });
  const { contents } = outputFiles[0];
  const gzipped = gzipSync(contents, { level: 9 }).length;
  console.log(`${kilobytes(contents.length)} ${kilobytes(gzipped)}  ${relative(root, join(dist, entry))}`);
}

function kilobytes(bytes) {
  return `${(bytes / 1000).toFixed(1).padStart(7)} kB`;
}
