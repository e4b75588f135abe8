/**
 * `npm run bench` runs all benchmarks, `npm run bench -- core start` those named. Prints one table and writes it to
 * test/out/bench.json. Nothing here is a test: figures depend on the machine, ratios within one run much less.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import { join } from 'node:path';
import { root } from './page.mjs';

const BENCHES = ['drag', 'core', 'outcomes', 'sight', 'blur', 'start', 'growth'];
const HEADINGS = ['value', 'beside', 'ratio', 'goal'];

const named = process.argv.slice(2);
const unknown = named.filter((name) => !BENCHES.includes(name));
if (unknown.length > 0) throw new Error(`No benchmark ${unknown.join(', ')}; there are ${BENCHES.join(', ')}.`);

const results = {};
for (const name of named.length > 0 ? named : BENCHES) {
  const { title, run } = await import(`./${name}.mjs`);
  console.error(`${name} …`);
  results[name] = { title, load: loadavg()[0], rows: await run() };
}

const width = Math.max(...Object.values(results).flatMap(({ rows }) => rows.map(({ what }) => what.length)));
console.log(`${''.padEnd(width)} ${HEADINGS.map((heading) => heading.padStart(11)).join('')}`);
for (const { title, load, rows } of Object.values(results)) {
  console.log(`${title} (load of the machine ${load.toFixed(1)})`);
  for (const row of rows) console.log(`${row.what.padEnd(width)} ${HEADINGS.map((heading) => shown(heading, row[heading]).padStart(11)).join('')}`);
}

const folder = join(root, 'test/out');
mkdirSync(folder, { recursive: true });
const machine = { node: process.version, platform: process.platform, processor: cpus()[0]?.model, processors: cpus().length };
writeFileSync(join(folder, 'bench.json'), `${JSON.stringify({ machine, results }, null, 2)}\n`);

function shown(heading, value) {
  if (value === null || value === undefined || !Number.isFinite(value)) return '–';
  if (heading === 'goal') return `≤ ${value}`;
  if (heading === 'ratio') return `${value < 0.1 ? value.toPrecision(2) : value.toFixed(2)} ×`;
  if (Math.abs(value) >= 1000) return Math.round(value).toLocaleString('en');
  return value.toFixed(2);
}
