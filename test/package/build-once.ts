import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './built.js';

/** What the build reads. */
const SOURCES = [
  ...['core', 'components', 'test/manifest', 'tsconfig.json', 'package.json', 'package-lock.json'],
  ...['build.mjs', 'carriers.mjs', 'classic.mjs', 'minify-templates.mjs', 'worker-file.mjs', 'tsconfig.build.json'].map((name) => `test/${name}`),
];

/** The last thing that the build writes. */
const LAST = join(root, 'dist/web-types.json');

/** Builds dist/ before the tests of the package, once a run, and not at all when it is newer than all it is made of. */
export default function setup(): void {
  if (existsSync(LAST) && SOURCES.every((name) => newest(join(root, name)) < statSync(LAST).mtimeMs)) return;
  const { status, stdout, stderr } = spawnSync(process.execPath, ['test/build.mjs'], { cwd: root, encoding: 'utf8' });
  if (status !== 0) throw new Error(`The build has failed:\n${stdout}${stderr}`);
}

/** A folder changes when something in it is removed. */
export function newest(path: string): number {
  const stat = statSync(path);
  if (!stat.isDirectory()) return stat.mtimeMs;
  return Math.max(stat.mtimeMs, ...readdirSync(path).map((name) => newest(join(path, name))));
}
