/**
 * `npm run test:monkey`: seeded random users. `-- --engine firefox --actions 20000 --seed 7`; without an engine in all that
 * are there, one after the other. What fails is repeated with the seed and the number of the action in its message.
 */
import { parseArgs } from 'node:util';
import { inEachEngine } from '../engines/each.mjs';

const { engine, actions, seed } = parseArgs({
  options: { engine: { type: 'string' }, actions: { type: 'string', default: '2000' }, seed: { type: 'string', default: '1' } },
}).values;
for (const [name, text] of Object.entries({ actions, seed })) if (!/^\d{1,9}$/.test(text)) throw new Error(`--${name} takes a whole number, not ${text}.`);

inEachEngine({ suite: 'monkey', engine, environment: { ASTIG_MONKEY_ACTIONS: actions, ASTIG_MONKEY_SEED: seed } });
