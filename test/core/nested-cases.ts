/** Described eyes for the tests of the scatter: strong lenses alone and beside cuts, and cuts alone. */
import type { Described } from './nested.js';

const entry = { flattening: 0.3, site: 90, width: 2.4, sd: 0.3 };
const wide = { flattening: 0.5, site: 200, width: 3.2, sd: 0.45 };
// Scatter of arcs along their meridian: 0.45 of what they do, at least 0.25 D; across it 0.35 D.
const arc = { flattening: 1, site: 90, count: 1, along: 0.45, across: 0.35 } as const;
const pair = { flattening: 1.6, site: 20, count: 2, along: 0.72, across: 0.35 } as const;
const small = { flattening: 0.4, site: 110, count: 1, along: 0.25, across: 0.35 } as const;

const matched = (cylinder: number): Described => ({ front: [cylinder, 90], lens: { cylinder, meridian: 90 } });

/** Without a lens beside cuts: the mixture over the marks is all there is, so nothing is approximated. */
export const EXACT: [name: string, eye: Described][] = [
  ['a lens of 1 D', matched(1)],
  ['a lens of 3 D', matched(3)],
  ['a lens of 6 D', matched(6)],
  ['a lens of 12 D', matched(12)],
  ['a lens of 6 D in a dry eye', { ...matched(6), readings: 0.25 }],
  ['a lens of 3.5 D beside its meridian', { front: [3, 30], lens: { cylinder: 3.5, meridian: 33 } }],
  ['an entry and an arc', { front: [1.3, 90], entry, arcs: arc }],
  ['a wide entry and a pair of arcs', { front: [2, 20], entry: wide, arcs: pair }],
  ['a small arc', { front: [0.9, 110], arcs: small }],
];

/**
 * With a lens beside cuts: its turn against its marks is taken as a normal of the same moments. `most` is the largest
 * difference that this was measured to make at 0.25, 0.5, 0.75 and 1 D, rounded up. It grows with the square of the
 * cylinder, for the turned lens runs on an arc and not on a line, and shrinks with the scatter of the cuts that hides it.
 */
export const APPROXIMATE: [name: string, eye: Described, most: number][] = [
  ['a lens of 3 D and an entry', { front: [3.3, 90], entry, lens: { cylinder: 3, meridian: 90 } }, 2.4e-4],
  ['a lens of 6 D and an entry', { front: [6.3, 90], entry, lens: { cylinder: 6, meridian: 90 } }, 1.2e-3],
  ['a lens of 12 D and an entry', { front: [12.3, 90], entry, lens: { cylinder: 12, meridian: 90 } }, 3.2e-3],
  ['a lens of 3 D, an entry and an arc', { front: [4.3, 90], entry, arcs: arc, lens: { cylinder: 3, meridian: 90 } }, 7e-5],
  ['a lens of 6 D, an entry and an arc', { front: [7.3, 90], entry, arcs: arc, lens: { cylinder: 6, meridian: 90 } }, 4.9e-4],
];

export const ASKED = [0.25, 0.5, 0.75, 1] as const;
