import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { TORSION, cyclotorsion, meridianLying, siteLying, siteName, torsionReferences, references } from '../../core/index.js';
import type { EyeSide } from '../../core/index.js';
import { clinicalFigures, target } from './clinical-readers.js';

const EYES: readonly EyeSide[] = ['right', 'left'];

/** Sites as they are read: whole degrees and tenths. */
const degrees = fc.integer({ min: 0, max: 3600 }).map((tenths) => tenths / 10);
const turned = fc.integer({ min: -250, max: 250 }).map((tenths) => tenths / 10);

describe('the turn of an eye between sitting and lying', () => {
  it.each([
    [180, 184, 4],
    [180, 175.5, -4.5],
    [0, 5, 5],
    [360, 5, 5],
    [0, 355, -5],
    [358, 3, 5],
    [3, 358, -5],
    [0, 360, 0],
    [90, 90, 0],
    [0.1, 0.4, 0.3],
    [10, 9.96, 0],
  ])('a mark put at %s° and seen at %s° has turned by %s°, in both eyes', (seated, lying, turn) => {
    for (const eye of EYES) expect(cyclotorsion({ seated, lying }, eye).turn).toBe(turn);
  });

  // Facing the patient a right eye has its temporal side at the viewer's left, 180°, so what turns counter-clockwise moves 12 o'clock towards the temple.
  it('counter-clockwise is outwards in a right eye and inwards in a left one', () => {
    expect(EYES.map((eye) => cyclotorsion({ seated: 90, lying: 97 }, eye).direction)).toEqual(['out', 'in']);
    expect(EYES.map((eye) => cyclotorsion({ seated: 90, lying: 83 }, eye).direction)).toEqual(['in', 'out']);
    expect(EYES.map((eye) => cyclotorsion({ seated: 90, lying: 90 }, eye).direction)).toEqual(['none', 'none']);
  });

  it('outwards takes what lies above to the temporal side, by the names of the sites themselves', () => {
    for (const eye of EYES) {
      for (const lying of [70, 110]) {
        const torsion = cyclotorsion({ seated: 90, lying }, eye);
        // From 67.5 to 112.5° everything is called superior; half an octant more tells the sides apart.
        const where = siteName(siteLying(90 + Math.sign(torsion.turn) * 5, torsion), eye);
        expect(where).toBe(torsion.direction === 'out' ? 'superotemporal' : 'superonasal');
      }
    }
  });

  it('comes back from the mark itself: the mark put at φ lies at ψ', () => {
    fc.assert(
      fc.property(degrees, turned, fc.constantFrom(...EYES), (seated, by, eye) => {
        const lying = Math.round((((seated + by) % 360) + 360) % 360 * 10) / 10;
        const torsion = cyclotorsion({ seated, lying }, eye);
        expect(torsion.turn).toBeCloseTo(by, 6);
        const back = siteLying(seated, torsion);
        expect(Math.abs(((back - lying + 540) % 360) - 180)).toBeLessThan(1e-6);
      }),
    );
  });

  /** By complex numbers: a turn is a multiplication, and says nothing of 0 or 360°. */
  it('is the same by multiplication of complex numbers', () => {
    fc.assert(
      fc.property(degrees, degrees, turned, (planned, seated, by) => {
        const radians = (angle: number): number => (angle * Math.PI) / 180;
        const lying = Math.round((((seated + by) % 360) + 360) % 360 * 10) / 10;
        const moved = siteLying(planned, cyclotorsion({ seated, lying }, 'left'));
        const [re, im] = [Math.cos(radians(by)), Math.sin(radians(by))];
        const [x, y] = [Math.cos(radians(planned)), Math.sin(radians(planned))];
        expect(Math.cos(radians(moved))).toBeCloseTo(x * re - y * im, 6);
        expect(Math.sin(radians(moved))).toBeCloseTo(x * im + y * re, 6);
      }),
    );
  });

  it('leaves sites in [0, 360) and meridians in (0, 180]', () => {
    expect(siteLying(358, { turn: 5 })).toBe(3);
    expect(siteLying(2, { turn: -5 })).toBe(357);
    expect(siteLying(355, { turn: 5 })).toBe(0);
    expect(siteLying(359.99, { turn: 0 })).toBe(0);
    expect(meridianLying(178, { turn: 5 })).toBe(3);
    expect(meridianLying(2, { turn: -5 })).toBe(177);
    expect(meridianLying(5, { turn: -5 })).toBe(180);
    expect(meridianLying(180, { turn: 0 })).toBe(180);
    fc.assert(fc.property(degrees, turned, (planned, turn) => siteLying(planned, { turn }) < 360 && meridianLying(planned, { turn }) > 0 && meridianLying(planned, { turn }) <= 180));
  });

  it('keeps every distance between two cuts', () => {
    fc.assert(
      fc.property(degrees, degrees, turned, (a, b, turn) => {
        const before = (((a - b) % 360) + 360) % 360;
        const after = (((siteLying(a, { turn }) - siteLying(b, { turn })) % 360) + 360) % 360;
        expect(Math.abs(((before - after + 540) % 360) - 180)).toBeLessThan(1e-6);
      }),
    );
  });

  it('is unusual above the common values, in both directions', () => {
    const unusual = (lying: number): boolean => cyclotorsion({ seated: 0, lying }, 'right').unusual;
    expect([6, 354, 6.1, 353.9, 25, 335].map(unusual)).toEqual([false, false, true, true, true, true]);
  });

  it.each([
    [{ seated: 0, lying: 90 }, /markLying: 90 is refused; allowed is 335 to 25 °, .*put at 0° turns by at most 25°/],
    [{ seated: 180, lying: 0 }, /markLying: 0 is refused; allowed is 155 to 205 °/],
    [{ seated: 10, lying: 344.9 }, /markLying: 344.9 is refused; allowed is 345 to 35 °/],
    [{ seated: -1, lying: 0 }, /markSeated: -1 is refused; allowed is 0 to 360 °/],
    [{ seated: 0, lying: 361 }, /markLying: 361 is refused; allowed is 0 to 360 °/],
    [{ seated: NaN, lying: 0 }, /markSeated: NaN is refused/],
    [{ seated: '180' as unknown as number, lying: 0 }, /markSeated: “180” is refused/],
  ])('refuses %o, naming field, value and limits', (readings, message) => {
    for (const eye of EYES) expect(() => cyclotorsion(readings, eye)).toThrow(message);
    expect(() => cyclotorsion(readings, 'right')).toThrow(RangeError);
  });

  it('has a source for each of its limits', () => {
    for (const { source, note } of Object.values(TORSION)) {
      expect(note).not.toBe('');
      for (const id of source) expect(id in torsionReferences || id in references, id).toBe(true);
    }
    // The published means, standard deviations and extremes from which the limits were made.
    const [gess, kang, most] = clinicalFigures(/^torsion-/).map(([, entry]) => target(entry));
    expect(TORSION.usual.value).toBeGreaterThan(gess!);
    expect(TORSION.usual.value).toBeLessThan(kang!);
    expect(TORSION.most.value).toBeGreaterThan(most!);
  });
});
