import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { create, ts } from '@custom-elements-manifest/analyzer/index.js';
import { litPlugin } from '@custom-elements-manifest/analyzer/src/features/framework-plugins/lit/lit.js';
import { build } from 'esbuild';
import { expandedTypes } from './expanded-types.mjs';
import { publicApi } from './public-api.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** The custom elements manifest of the sources as they are, with paths as they are published. */
export async function customElementsManifest() {
  const files = readdirSync(join(root, 'components'), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join(root, 'components', name))
    .sort();
  const types = expandedTypes(ts, files, join(root, 'tsconfig.json'));
  const plugins = [...litPlugin(), types.plugin, publicApi(root, await core())];
  return create({ modules: types.modules, plugins, context: { dev: false, thirdPartyCEMs: [] } });
}

/** The core as it is, for the defaults of a plan and for what of it has limits, which the source of an element only names. */
async function core() {
  const { outputFiles } = await build({ entryPoints: [join(root, 'core/numbers.ts')], bundle: true, format: 'esm', write: false });
  return await import(`data:text/javascript;base64,${Buffer.from(outputFiles[0].contents).toString('base64')}`);
}
