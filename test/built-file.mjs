import { ALL, bundleOneFile } from './one-file.mjs';

/**
 * Plugin for @web/test-runner that serves the one file of all elements, and its chunks, as the build makes them, for pages
 * that load it. It is made when it is first asked for, and nothing is written: several engines may be tested at once.
 * @returns {import('@web/test-runner-core').TestRunnerPlugin}
 */
export function builtFile(root) {
  let made;
  return {
    name: 'built-file',
    async serve({ path }) {
      if (!/^\/dist\/(astigmatism-elements\.js|chunks\/)/.test(path)) return undefined;
      made ??= bundleOneFile(root, ALL);
      const file = (await made).find((one) => `/dist/${one.path}` === path);
      return file && { body: Buffer.from(file.contents).toString(), type: 'js' };
    },
  };
}
