import { MODEL, site, temporalSite } from '../../core/numbers.js';
import type { EyeSide } from '../../core/numbers.js';
import { outside, polar, ticks } from './geometry.js';
import { EDGE, GAP, TITLE, figureSize, heightBeside } from './layout.js';
import type { Label } from './layout.js';
import { textSize } from './measure.js';

/** Radii of the drawing, mm on the eye. */
export const RADII = {
  pupil: 1.9,
  iris: 5.3,
  limbus: MODEL.eye.limbusDiameter / 2,
  /** Handle of the incision, on the white of the eye. */
  handle: 6.75,
  ring: 7.5,
  tick: 7.75,
  longTick: 7.95,
  clock: 6.68,
} as const;

/** What stays the same while the plan changes. Sizes in CSS px. */
export interface CorneaLayout {
  half: number;
  /** Half the height; more than `half` where words above and below need room. */
  halfHeight: number;
  /** Font size of the figures. */
  size: number;
  /** px for one mm on the eye. */
  scale: number;
  turn: number;
  tickPath: string;
  longTickPath: string;
  irisPath: string;
  degrees: readonly Label[];
  clock: readonly (Label & { site: number })[];
  /** Where the words for the two sides stand, and the name of the eye. */
  words: readonly Label[];
  title: Label;
}

/** Least room for the clock hours over the size of their text. */
const CLOCK_ROOM = 1.6;

export interface LayoutInput {
  width: number;
  font: number;
  family: string;
  turn: number;
  eye: EyeSide;
  title: string;
  /** Words for the two sides. */
  sides: { temporal: string; nasal: string };
}

const every = (step: number): number[] => Array.from({ length: 360 / step }, (_, index) => index * step);

/** Everything of the drawing that does not depend on the plan, from its width and the size of its text. */
export function layoutCornea({ width, font, family, turn, eye, title, sides }: LayoutInput): CorneaLayout {
  const half = width / 2;
  const size = figureSize(font, width);
  const figure = textSize('270', size, family);
  const scale = Math.max(4, (half - GAP - figure.width - EDGE) / RADII.longTick);
  const ring = RADII.longTick * scale + GAP;
  const outer = ring + Math.max(figure.width, figure.height);
  const words = sideWords(eye, turn, sides);
  const wordSizes = words.map(({ text }) => textSize(text, size, family));
  const titleSize = textSize(title, TITLE * size, family, 600);
  const halfHeight = Math.max(half, ...[...wordSizes, titleSize].map((word) => heightBeside(outer, half, word.width, word.height)));
  const edge = half - EDGE;
  // Large text on a small drawing leaves no room for the clock hours; the degrees stay.
  const room = (RADII.ring - RADII.limbus) * scale > CLOCK_ROOM * size;
  return {
    half,
    halfHeight,
    size,
    scale,
    turn,
    tickPath: ticks(every(10).filter((degrees) => degrees % 30 !== 0), RADII.ring * scale, RADII.tick * scale),
    longTickPath: ticks(every(30), RADII.ring * scale, RADII.longTick * scale),
    irisPath: ticks(every(5), (RADII.pupil + 0.35) * scale, RADII.iris * scale),
    degrees: every(30).map((degrees) => {
      const text = String(degrees);
      const { width: wide } = textSize(text, size, family);
      return { ...outside(degrees + turn, ring, wide, figure.height * 0.8), text, anchor: 'middle' };
    }),
    clock: (room ? every(30) : []).map((degrees) => ({
      ...polar(degrees + turn, RADII.clock * scale),
      site: degrees,
      text: String(((12 - degrees / 30 + 2) % 12) + 1),
      anchor: 'middle',
    })),
    words: words.map(({ text, right, top }) => ({
      text,
      x: right ? edge : -edge,
      y: (top ? -1 : 1) * (halfHeight - (top ? size : size * 0.35)),
      anchor: right ? 'end' : 'start',
    })),
    title: { text: title, x: -edge, y: -halfHeight + TITLE * size, anchor: 'start' },
  };
}

/** "nasal" and "temporal" in the corner towards their side, with an arrow that points there. */
function sideWords(eye: EyeSide, turn: number, { temporal, nasal }: LayoutInput['sides']): { text: string; right: boolean; top: boolean }[] {
  const sides = [[temporal, temporalSite(eye)] as const, [nasal, temporalSite(eye) + 180] as const];
  return sides.map(([name, at]) => {
    const shown = site(at + turn);
    if (shown === 0) return { text: `${name} →`, right: true, top: false };
    if (shown === 180) return { text: `← ${name}`, right: false, top: false };
    return shown === 270 ? { text: `${name} ↓`, right: true, top: false } : { text: `${name} ↑`, right: true, top: true };
  });
}
