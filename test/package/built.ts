import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

export const NAME = 'astigmatism-elements';

interface PackageFile {
  exports: Record<string, unknown>;
  files: string[];
  sideEffects: string[];
}

export const packageFile = readJson<PackageFile>('package.json');

export function readJson<T>(path: string): T {
  return JSON.parse(readFileSync(join(root, path), 'utf8')) as T;
}

/** Folders of the elements, which are their names in import paths too. */
export const elements = readdirSync(join(root, 'components'), { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && entry.name !== 'internal')
  .map(({ name }) => name);

/** Everything that can be imported, patterns spelled out; those without anything to run, and JSON, apart. */
export const paths = Object.entries(packageFile.exports).flatMap(([path, target]) => {
  if (target === null) return [];
  const names = path.includes('*') ? elements.map((name) => path.replace('*', name)) : [path];
  const kind = path.endsWith('.json') ? 'json' : typeof target === 'object' && !('default' in target) ? 'types' : 'module';
  return names.map((name) => ({ path: name, specifier: name.replace(/^\./, NAME), kind }));
});
