/**
 * `npm run test:visual`: pictures of the drawings beside those in `test/fixtures/pictures`, in each engine that is there.
 * `-- --engine webkit` for one; `-- --update` keeps the new pictures: look at each before it is committed. They hold for
 * the fonts of one machine, so this is no part of `npm test`. What differs is drawn into `test/out/pictures`.
 */
import { parseArgs } from 'node:util';
import { inEachEngine } from '../engines/each.mjs';

const { engine, update } = parseArgs({ options: { engine: { type: 'string' }, update: { type: 'boolean' } } }).values;

inEachEngine({ suite: 'visual', engine, environment: { ASTIG_UPDATE_PICTURES: update ? '1' : '' } });
