import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MODEL, alongCircle, chordOf, spanOf } from '../../core/index.js';

const limbus = MODEL.eye.limbusDiameter;

describe('degrees and millimetres on a circle of the eye', () => {
  it('one degree of a limbus of 11.7 mm is about 0.1 mm, and a clock hour about 3 mm', () => {
    expect(alongCircle(1, limbus)).toBeCloseTo(0.102, 3);
    expect(alongCircle(30, limbus)).toBeCloseTo(3.06, 2);
    expect(alongCircle(360, limbus)).toBeCloseTo(Math.PI * 11.7, 10);
  });

  it('an arc of 60° on 11 mm is 5.76 mm long and 5.50 mm straight across: a regular hexagon', () => {
    expect(alongCircle(60, 11)).toBeCloseTo(5.76, 2);
    expect(chordOf(60, 11)).toBeCloseTo(5.5, 10);
    expect(chordOf(180, 11)).toBeCloseTo(11, 10);
    expect(chordOf(90, 11)).toBeCloseTo(11 / Math.SQRT2, 10);
  });

  it('an incision of 2.4 mm spans 23.7° of the limbus', () => {
    expect(spanOf(2.4, limbus)).toBeCloseTo(23.67, 2);
  });

  it('span and chord are each other’s way back, and the way along is the longer one', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 180, noNaN: true }), fc.double({ min: 7, max: 12, noNaN: true }), (degrees, diameter) => {
        expect(spanOf(chordOf(degrees, diameter), diameter)).toBeCloseTo(degrees, 4);
        expect(alongCircle(degrees, diameter)).toBeGreaterThan(chordOf(degrees, diameter));
      }),
    );
  });

  it('the length along a circle is that of many short straight pieces', () => {
    const pieces = 10_000;
    let walked = 0;
    for (let piece = 0; piece < pieces; piece++) walked += chordOf(75 / pieces, 10.5);
    expect(walked).toBeCloseTo(alongCircle(75, 10.5), 6);
  });

  it.each([
    [() => chordOf(361, 11), /angle: 361 is refused/],
    [() => spanOf(12, 11), /chord: 12 is refused; allowed is 0 to 11 mm/],
    [() => alongCircle(NaN, 11), /angle: NaN is refused/],
  ])('refuses what is no angle or longer than the circle is wide', (wrong, message) => {
    expect(wrong).toThrow(message);
  });
});
