/** `npm run accuracy`: every published value beside what the core calculates. `-- --write` puts the tables into README.md. */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { build } from 'esbuild';

const path = (name) => fileURLToPath(new URL(`../${name}`, import.meta.url));

const { write } = parseArgs({ options: { write: { type: 'boolean' } } }).values;
const { report, withAccuracy } = await load();
console.log(report());
if (write) writeFileSync(path('README.md'), withAccuracy(readFileSync(path('README.md'), 'utf8')));

/** The sources as they are, for Node cannot read TypeScript. */
async function load() {
  const { outputFiles } = await build({ entryPoints: [path('test/accuracy/main.ts')], bundle: true, format: 'esm', platform: 'node', write: false, tsconfig: path('tsconfig.json') });
  return import(`data:text/javascript;base64,${Buffer.from(outputFiles[0].contents).toString('base64')}`);
}
