import { readFileSync, writeFileSync } from 'node:fs';
import { customElementJetBrainsPlugin } from 'custom-element-jet-brains-integration';
import { customElementVsCodePlugin } from 'custom-element-vs-code-integration';
import { DEFAULTS } from '../../dist/core/numbers.js';
import { expandedTypes } from './expanded-types.mjs';
import { publicApi } from './public-api.mjs';
import { typings } from './typings.mjs';

const types = expandedTypes('tsconfig.json');
const outdir = 'dist';

/** For the analyzer, run from the root of the repository after the compiler: `cem analyze --config test/manifest/analyzer.config.mjs`. */
export default {
  globs: ['components/**/*.ts'],
  outdir,
  litelement: true,
  packagejson: false,
  quiet: true,
  overrideModuleCreation: types.modules,
  plugins: [
    types.plugin,
    publicApi(DEFAULTS),
    typings(`${outdir}/types`),
    customElementVsCodePlugin({ outdir, hideLogs: true }),
    eachPropertyOnce(`${outdir}/vscode.css-custom-data.json`),
    customElementJetBrainsPlugin({ outdir, hideLogs: true }),
  ],
};

/** The plugin before lists a custom property or a part once for each element that has it; an editor would offer it as often. */
function eachPropertyOnce(path) {
  return {
    name: 'each-property-once',
    packageLinkPhase() {
      const data = JSON.parse(readFileSync(path, 'utf8'));
      for (const list of ['properties', 'pseudoElements']) data[list] = [...new Map(data[list].map((item) => [item.name, item])).values()];
      writeFileSync(path, `${JSON.stringify(data, undefined, 2)}\n`);
    },
  };
}
