/** As much of vitest as the tests of the core use, without its runner: the same matchers on the same assertions. */
import fc from 'fast-check';
import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';

const require = createRequire(import.meta.url);
const vitest = createRequire(require.resolve('vitest/package.json'));
const load = (name) => import(pathToFileURL(vitest.resolve(name)).href);
const [chai, matchers] = await Promise.all([load('chai'), load('@vitest/expect')]);
for (const plugin of [matchers.JestExtend, matchers.JestChaiExpect, matchers.JestAsymmetricMatchers]) chai.use(plugin);

const expect = Object.assign((value, message) => chai.expect(value, message), chai.expect);
globalThis[matchers.GLOBAL_EXPECT] = expect;
Object.assign(expect, globalThis[matchers.ASYMMETRIC_MATCHERS_OBJECT]);
matchers.setState({ assertionCalls: 0, isExpectingAssertions: false }, expect);

/** Properties are tried on the same few examples each time, so that a mutant that lives has been asked the same as before. */
const RUNS = 100;
const properties = {
  ...fc,
  assert: (property, options = {}) => fc.assert(property, { seed: 20, ...options, numRuns: Math.min(options.numRuns ?? 100, RUNS), endOnFailure: true, verbose: 0 }),
};

/**
 * Parts of the names of tests that are left out: two count over the examples of a property and so need all of them, the
 * others are long, or check a reference and not the core.
 */
const LEFT_OUT = [
  'no answer holds a NaN', 'has a known id',
  'million draws', 'twice the steps', 'a lens beside cuts turns', 'for lenses of every strength', 'agrees with it where the spread is', 'agrees with a quadrature in polar',
  'a slip of 90° among them', 'arcs: share and scatter', 'eyes: the error that is stated', 'as waves keeps its accuracy however', 'the density of F, integrated',
  'axial power is the mean of the tangential power from', 'real rays through a toric surface', 'step by step tells how far', 'limits themselves are accepted',
];

// Loaded now, so that no test seems to be slow because it comes first.
for (const name of ['mathjs', 'seedrandom', 'papaparse', 'fft.js']) require(name);

/** The tests in a script, and what has to be done before them. */
export async function collected(script) {
  const list = [];
  const before = [];
  let names = [];
  const under = (name, body) => {
    names.push(name);
    body();
    names = names.slice(0, -1);
  };
  const describe = (name, body) => under(name, body);
  const test = (title, ...given) => {
    const name = [...names, title].join(' ');
    if (!LEFT_OUT.some((part) => name.includes(part))) list.push({ name, run: given.find((one) => typeof one === 'function') });
  };
  const each = (make) => (rows) => (name, body) => {
    const spread = rows.every(Array.isArray);
    rows.forEach((row, index) => make(`${name} [${index}]`, () => body(...(spread ? row : [row]))));
  };
  describe.each = each(describe);
  test.each = each(test);
  const standIn = { describe, test, it: test, expect, beforeAll: (run) => before.push(run), afterAll: () => undefined };
  script.runInThisContext()((name) => (name === 'vitest' ? standIn : name === 'fast-check' ? properties : require(name)));
  return { list, before: async () => { for (const run of before) await run(); } };
}
