/** Whatever a page writes into an attribute of a case is either a correct value or refused in words; nothing throws. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { AstigCase } from '../../components/case/case.js';
import { DEFAULTS, LIMITS, evaluatePlan } from '../../core/index.js';
import { NASTY, attributeText } from './nasty.js';
import { numbersIn } from './plans.js';

if (!customElements.get('astig-case')) customElements.define('astig-case', AstigCase);

/** A case in which each field can take any value within its limits without contradicting another. */
const QUIET = { 'arc-site': '90', 'lens-meridian': '90' };

type Attribute = keyof typeof READ;

/** What a text means, written apart from the library: the value it must take in the plan, or undefined where it must be refused. */
const READ = {
  eye: (text: string) => words(text, ['right', 'left']),
  'k-unit': (text: string) => (text === 'D' || text === 'mm' ? null : undefined),
  'flat-k': (text: string) => number(text, 28, DEFAULTS.steepK, DEFAULTS.flatK),
  'steep-k': (text: string) => number(text, DEFAULTS.flatK, 75, DEFAULTS.steepK),
  'steep-meridian': (text: string) => number(text, 0, 180, 90, (value) => (value === 0 ? 180 : value)),
  age: (text: string) => number(text, 1, 120, null),
  'back-surface': (text: string) => words(text, ['omitted', 'typical']) ?? measured(text),
  'incision-site': (text: string) => number(text, 0, 360, null, (value) => value % 360),
  'incision-width': (text: string) => number(text, 1.8, 3.5, 2.4),
  'incision-flattening': (text: string) => number(text, -1, 3, null),
  'arc-site': (text: string) => number(text, 0, 360, null, (value) => value % 360),
  'arc-length': (text: string) => number(text, 15, 120, 45),
  'arc-count': (text: string) => number(text, 0, 2, 0, (value) => (Number.isInteger(value) ? value : undefined)),
  'arc-zone': (text: string) => number(text, 7, 12, 11),
  'arc-depth': (text: string) => number(text, 100, 900, null),
  'arc-method': (text: string) => words(text, ['blade', 'laser']),
  'arc-flattening': (text: string) => number(text, 0, 6, null),
  'local-thickness': (text: string) => number(text, 300, 1100, null),
  'lens-cylinder': (text: string) => number(text, 0, 12, null),
  'lens-meridian': (text: string) => number(text, 0, 180, null, (value) => (value === 0 ? 180 : value)),
  risks: (text: string) => risks(text),
} as const;

const ATTRIBUTES = Object.keys(READ) as Attribute[];

function words(text: string, known: string[]): string | undefined {
  return known.includes(text) ? text : undefined;
}

function number(text: string, min: number, max: number, none: number | null, taken: (value: number) => number | undefined = (value) => value): number | null | undefined {
  const bare = text.trim();
  if (bare === '' || bare === 'none') return none;
  if ([...bare].some((sign) => !'0123456789.+-'.includes(sign))) return undefined;
  const value = Number(bare);
  // A plan knows no zero with a sign.
  return value >= min && value <= max ? taken(value === 0 ? 0 : value) : undefined;
}

/** Two plain numbers round an @; the text itself is what the plan keeps. */
function measured(text: string): string | undefined {
  const [power = '', along = '', ...more] = text.split('@').map((part) => part.trim());
  const bare = along.endsWith('°') ? along.slice(0, -1).trim() : along;
  const plain = [power, bare].every((part) => /^[0-9]/.test(part) && /[0-9]$/.test(part) && [...part].every((sign) => '0123456789.'.includes(sign)) && Number.isFinite(Number(part)));
  return more.length === 0 && plain && Number(power) <= 3 && Number(bare) <= 180 ? text : undefined;
}

function risks(text: string): string | undefined {
  const order = ['collagen', 'dry-eye', 'radial-cuts', 'ectasia'];
  const named = text.split(/\s/).filter((word) => word !== '');
  return named.every((word) => order.includes(word)) ? order.filter((word) => named.includes(word)).join(' ') : undefined;
}

const property = (attribute: string): string => attribute.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());

function quietCase(): AstigCase {
  const eye = new AstigCase();
  for (const [name, text] of Object.entries(QUIET)) eye.attributeChangedCallback(name, null, text);
  return eye;
}

/** Sets one attribute of a fresh case; says whether it was taken. Throws where the case does neither of the two. */
function tried(attribute: Attribute, text: string): boolean {
  const eye = quietCase();
  const before = eye.plan;
  eye.attributeChangedCallback(attribute, null, text);
  const expected = READ[attribute](text);
  const { plan, outcome, refusals } = eye;
  if (expected === undefined) {
    expect(refusals.length, `${attribute}=${JSON.stringify(text)} was taken`).toBeGreaterThan(0);
    const { field, message, limits } = refusals[0]!;
    // A flat reading that is possible but above the steep one: what contradicts it is named, with the flat one in the reason.
    const above = attribute === 'flat-k' && number(text, 28, 75, null) !== undefined;
    expect(field).toBe(above ? 'steepK' : property(attribute));
    if (above) expect(message).toContain('must not be below flatK');
    expect(message.startsWith(`${field}: `) && message.includes(limits) && limits !== '').toBe(true);
    expect(plan).toBe(before);
    return false;
  }
  expect(refusals.map(({ message }) => message)).toEqual([]);
  if (attribute !== 'k-unit') expect(plan[property(attribute) as keyof typeof plan]).toBe(expected);
  for (const [path, value] of numbersIn(outcome)) if (!Number.isFinite(value)) throw new Error(`${attribute}=${JSON.stringify(text)}: ${path} is ${value}`);
  return true;
}

describe('attributes of a case', () => {
  test('the list here is the list of the element', () => {
    const own = [...AstigCase.elementProperties.values()].map(({ attribute }) => attribute);
    const inherent = [...AstigCase.elementProperties].filter(([, { attribute }]) => attribute === undefined || attribute === true).map(([name]) => String(name));
    expect([...own.filter((name) => typeof name === 'string'), ...inherent].filter((name) => name !== 'read-only').sort()).toEqual([...ATTRIBUTES].sort());
    for (const [field, { min, max }] of Object.entries(LIMITS)) expect(min, field).toBeLessThan(max);
  });

  test.each(ATTRIBUTES)('%s: every nasty text is taken correctly or refused in words', (attribute) => {
    for (const text of NASTY) tried(attribute, text);
  });

  test('100 000 random texts are taken correctly or refused in words', { timeout: 300_000 }, () => {
    let taken = 0;
    let refused = 0;
    fc.assert(
      fc.property(fc.constantFrom(...ATTRIBUTES), attributeText, (attribute, text) => {
        if (tried(attribute, text)) taken += 1;
        else refused += 1;
      }),
      { seed: 20240229, numRuns: 100_000 },
    );
    // Texts of one kind only would prove half of it.
    expect(taken).toBeGreaterThan(15_000);
    expect(refused).toBeGreaterThan(15_000);
  });

  test('many at once: the plan is a whole one, or the one before', { timeout: 300_000 }, () => {
    let taken = 0;
    fc.assert(
      fc.property(fc.dictionary(fc.constantFrom(...ATTRIBUTES), attributeText, { maxKeys: 5 }), (settings) => {
        const eye = quietCase();
        const before = eye.plan;
        for (const [name, text] of Object.entries(settings)) eye.attributeChangedCallback(name, null, text);
        if (eye.refusals.length > 0) expect(eye.plan).toBe(before);
        else taken += 1;
        expect(JSON.stringify(eye.outcome)).toBe(JSON.stringify(evaluatePlan(eye.plan)));
      }),
      { seed: 20240229, numRuns: 10_000 },
    );
    expect(taken).toBeGreaterThan(500);
  });
});
