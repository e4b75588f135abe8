import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CONSTANTS, MODEL, SIGHT_MODEL, cautionsFor, references, type ModelConstant, type SourceId } from '../../core/index.js';
import { RUNS, anyPlan } from './plans.js';

/**
 * Records behind a formula or a convention rather than behind a constant or a caution: the comments of the core and
 * the pages that explain it name them.
 */
const BACKGROUND: Partial<Record<SourceId, string>> = {
  iso8429: 'the dial on which all degrees are counted',
  iso10343: 'the keratometric constant',
  thibos1997: 'power vectors',
  holladay1992: 'the double-angle plane',
  naeser1994: 'flattening and torque',
  iacle: 'a lens beside its meridian',
  edmund1987: 'why the central thickness does not tell that at the site',
  smith1982: 'blur and transfer by rays',
  thibos2004: 'refraction and wavefront',
  iso24157: 'Zernike functions',
};

type Constant = ModelConstant<number | readonly number[]>;

function* constantsIn(tree: object, path = 'CONSTANTS'): Generator<[path: string, constant: Constant]> {
  for (const [key, inner] of Object.entries(tree)) {
    if ('value' in inner) yield [`${path}.${key}`, inner as Constant];
    else yield* constantsIn(inner, `${path}.${key}`);
  }
}

const constants = [...constantsIn(CONSTANTS)];
const records = Object.entries(references) as [SourceId, { status: string; use: string; authors: string; title: string; journal: string; year: number | null; fromMemory?: readonly string[] }][];

describe.each(constants)('%s', (_, constant) => {
  test('is a number with a unit, a source and a note', () => {
    const values = [constant.value].flat();
    expect(values.length).toBeGreaterThan(0);
    for (const value of values) expect(Number.isFinite(value)).toBe(true);
    expect(constant.unit).toBeTypeOf('string');
    expect(constant.note.trim()).not.toBe('');
    expect(constant.source.length).toBeGreaterThan(0);
    expect(new Set(constant.source).size).toBe(constant.source.length);
    for (const id of constant.source) expect(Object.keys(references)).toContain(id);
  });
});

test('every number of the model is among them', () => {
  const names = Object.entries({ ...MODEL, sight: SIGHT_MODEL }).flatMap(([group, values]) => Object.keys(values).map((name) => `CONSTANTS.${group}.${name}`));
  expect(names.length).toBeGreaterThan(30);
  expect(constants.map(([path]) => path)).toEqual(names);
});

describe('the references', () => {

  test.each(records)('%s says whether it was read or recalled, and what is taken from it', (_, record) => {
    expect(['read', 'memory']).toContain(record.status);
    for (const part of [record.use, record.authors, record.title, record.journal]) expect(part.trim()).not.toBe('');
    expect(record.year === null || (Number.isInteger(record.year) && record.year > 1800 && record.year < 2100)).toBe(true);
    if (record.fromMemory) expect(record.fromMemory.length).toBeGreaterThan(0);
  });

  test('are each used by a constant, a caution, or listed as background, and not both', () => {
    const used = new Set<string>(constants.flatMap(([, { source }]) => source));
    fc.assert(fc.property(anyPlan, (plan) => cautionsFor(plan).forEach(({ source }) => used.add(source))), { ...RUNS, numRuns: 2000 });
    const background = Object.keys(BACKGROUND);
    expect(records.map(([id]) => id).filter((id) => !used.has(id) && !background.includes(id)), 'used by nothing').toEqual([]);
    expect(background.filter((id) => used.has(id)), 'listed as background, but used').toEqual([]);
    expect(background.filter((id) => !Object.hasOwn(references, id)), 'listed, but unknown').toEqual([]);
  });
});
