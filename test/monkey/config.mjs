import { fileURLToPath } from 'node:url';
import base from '../web-test-runner.config.mjs';

/** How many actions from which seed: `run.mjs` says so in the environment. */
const options = { actions: Number(process.env.ASTIG_MONKEY_ACTIONS ?? 2000), seed: Number(process.env.ASTIG_MONKEY_SEED ?? 1) };

function answer({ done }) {
  if (done) console.log(`${done} of ${options.actions} actions`);
  return options;
}

export default {
  ...base,
  rootDir: fileURLToPath(new URL('../..', import.meta.url)),
  files: ['test/monkey/*.test.ts'],
  plugins: [...base.plugins, { name: 'monkey', executeCommand: ({ command, payload }) => (command === 'monkey' ? answer(payload) : undefined) }],
  testsFinishTimeout: 4 * 3_600_000,
};
