/** `npm run build`: dist/ from scratch, and the size of what a page would load. */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { CARRIERS } from './carriers.mjs';
import { buildClassic } from './classic.mjs';
import { writeManifest } from './manifest/write.mjs';
import { minifyTemplates, shortenTemplates } from './minify-templates.mjs';
import { ALL, bundleOneFile, settings, sizeOf } from './one-file.mjs';
import { WORKERS, bundleFile } from './worker-file.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const dist = join(root, 'dist');
const common = settings(root);

rmSync(dist, { recursive: true, force: true });
const compiler = createRequire(import.meta.url).resolve('typescript/bin/tsc');
const { status } = spawnSync(process.execPath, [compiler, '-p', 'test/tsconfig.build.json'], { cwd: root, stdio: 'inherit' });
if (status !== 0) process.exit(status ?? 1);

// Some libraries need a bundler, and nobody should have to own one: the file that uses one carries it along.
for (const file of CARRIERS) await build({ ...common, entryPoints: [join(root, `${file}.ts`)], outfile: join(dist, `${file}.js`) });

// Who bundles the modules gets the templates as short as they are in the one file.
for (const file of readdirSync(join(dist, 'components'), { recursive: true, withFileTypes: true })) {
  if (!file.name.endsWith('.js')) continue;
  const path = join(file.parentPath, file.name);
  writeFileSync(path, await shortenTemplates(readFileSync(path, 'utf8'), path));
}

// The workers stand where the modules look for them.
for (const file of WORKERS) writeFileSync(join(dist, `${file}.js`), await bundleFile({ root, common }, file));

// One file for a page without a bundler. What few readers ask for (sources, other languages) comes when they do.
for (const { path, contents } of await bundleOneFile(root, ALL)) {
  mkdirSync(dirname(join(dist, path)), { recursive: true });
  writeFileSync(join(dist, path), contents);
}

const classic = await buildClassic({
  root,
  common,
  plugins: [minifyTemplates({ filter: /[\\/]components[\\/].*\.ts$/ })],
  entry: 'components/define.ts',
  heavy: 'core/algebra.ts',
  outfile: 'dist/astigmatism-elements.classic.js',
});

// What editors, frameworks and the reference know of the elements.
await writeManifest(dist);

const folders = readdirSync(join(dist, 'components'), { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && entry.name !== 'internal')
  .map((entry) => entry.name);
const entries = [
  ...classic.map((file) => relative('dist', file)),
  'components/index.js',
  'components/define.js',
  ...folders.flatMap((name) => [`components/${name}/${name}.js`, `components/${name}/define.js`]),
  'core/index.js',
  'core/outcomes.js',
  ...CARRIERS.map((file) => `${file}.js`),
].filter((name) => existsSync(join(dist, name)));

console.log(`${'minified'.padStart(10)} ${'gzip -9'.padStart(10)} ${'on demand'.padStart(10)}`);
const row = ({ minified, gzipped, later }, name) =>
  console.log(`${kilobytes(minified)} ${kilobytes(gzipped)} ${later > 0 ? kilobytes(later) : ''.padStart(10)}  ${name}`);

// One file for all, for the main job, and for that and one element more.
const MAIN = ['case', 'cornea', 'vectors', 'summary'];
const defining = (tags) => ({ name: 'some', source: tags.map((tag) => `import './components/${tag}/define.ts';`).join('') });
row(sizeOf(await bundleOneFile(root, defining(folders))), 'one file');
row(sizeOf(await bundleOneFile(root, defining(MAIN))), `one file: ${MAIN.join(', ')}`);
for (const tag of folders.filter((name) => !MAIN.includes(name))) row(sizeOf(await bundleOneFile(root, defining([...MAIN, tag]))), `one file: the same and ${tag}`);

// An entry's size is what a bundler would have a page load for it alone, Lit and all; what comes on demand stands apart.
for (const entry of entries) row(await sizes(entry), relative(root, join(dist, entry)));

async function sizes(entry) {
  const { outputFiles, metafile } = await build({ ...common, entryPoints: [join(dist, entry)], splitting: true, outdir: dist, metafile: true, write: false, logLevel: 'error' });
  const outputs = Object.fromEntries(Object.entries(metafile.outputs).map(([path, output]) => [join(root, path), output]));
  const atOnce = new Set();
  const follow = (path) => {
    if (atOnce.has(path)) return;
    atOnce.add(path);
    for (const { kind, path: next, external } of outputs[path].imports) if (kind === 'import-statement' && !external) follow(join(root, next));
  };
  follow(outputFiles.find(({ path }) => outputs[path].entryPoint === relative(root, join(dist, entry)))?.path);
  const gzip = (files) => files.reduce((total, { contents }) => total + gzipSync(contents, { level: 9 }).length, 0);
  const [now, rest] = [true, false].map((wanted) => outputFiles.filter(({ path }) => atOnce.has(path) === wanted));
  return { minified: now.reduce((total, { contents }) => total + contents.length, 0), gzipped: gzip(now), later: gzip(rest) };
}

function kilobytes(bytes) {
  return `${(bytes / 1000).toFixed(1).padStart(7)} kB`;
}
