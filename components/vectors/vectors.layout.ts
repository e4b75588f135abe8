import { outside, polar } from '../internal/geometry.js';
import type { Box, Point } from '../internal/geometry.js';
import { boxAround, placeLabels } from '../internal/labels.js';
import type { LabelRequest, Segment } from '../internal/labels.js';
import { EDGE, GAP, TITLE, figureSize, heightBeside } from '../internal/layout.js';
import type { Label } from '../internal/layout.js';
import { textSize } from '../internal/measure.js';
import type { TextSize } from '../internal/measure.js';
import { toPoint } from './vectors.parts.js';
import type { Arrow } from './vectors.parts.js';

/** What stays the same while the plan changes. Sizes in CSS px. */
export interface VectorsLayout {
  half: number;
  halfHeight: number;
  /** Radius of the outermost circle. */
  radius: number;
  rim: readonly Label[];
  words: readonly Label[];
  /** Which eye it is. */
  title: Label;
  /** Boxes that no other label may touch. */
  taken: readonly Box[];
  font: { small: number; family: string };
}

/** Meridians on the rim, degrees on the eye. In the diagram they stand at twice the angle. */
const RIM = [180, 15, 30, 45, 60, 75, 90, 105, 120, 135, 150, 165];

/** Half the width, px, below which names would cover the arrows. The key has them all. */
const LEAST_FOR_NAMES = 110;

/** The names of arrows are in bold. */
const LABEL_WEIGHT = 600;

export interface LayoutInput {
  width: number;
  font: number;
  family: string;
  title: string;
  /** What stands in the corners: the rule on the left, what goes against it on the right. */
  corners: readonly [string, string];
}

export function layoutVectors({ width, font, family, title, corners }: LayoutInput): VectorsLayout {
  const half = width / 2;
  const small = figureSize(font, width);
  const widest = textSize('165°', small, family);
  const radius = Math.max(20, half - GAP - widest.width - EDGE);
  const outer = radius + GAP + widest.width;
  const wordSizes = corners.map((word) => textSize(word, small, family));
  const titleSize = textSize(title, TITLE * small, family, LABEL_WEIGHT);
  const beside = Math.max(...[...wordSizes, titleSize].map((word) => heightBeside(outer, half, word.width, word.height)));
  // Where both do not fit into one line, the first goes up into the other corner, and below the name of the eye if need be.
  const apart = wordSizes.reduce((sum, word) => sum + word.width, font) > width;
  const below = apart && wordSizes[0]!.width + titleSize.width + font > width ? titleSize.height : 0;
  const halfHeight = Math.max(half, beside + below);
  const baseline = halfHeight - small * 0.35;
  const words: Label[] = [
    apart ? { text: corners[0], x: half - EDGE, y: below + small - halfHeight, anchor: 'end' } : { text: corners[0], x: EDGE - half, y: baseline, anchor: 'start' },
    { text: corners[1], x: half - EDGE, y: baseline, anchor: 'end' },
  ];
  const rim: Label[] = RIM.map((meridian) => {
    const text = `${meridian}°`;
    const { width: wide, height } = textSize(text, small, family);
    return { ...outside((2 * meridian) % 360, radius + GAP, wide, height * 0.8), text, anchor: 'middle' };
  });
  const taken = rim.map((label) => boxAround(label, textSize(label.text, small, family)));
  return { half, halfHeight, radius, rim, words, title: { text: title, x: EDGE - half, y: TITLE * small - halfHeight, anchor: 'start' }, taken, font: { small, family } };
}

/** Places for the names of the arrows and of the rings at the present scale. Some may have none. */
export function placeVectorLabels(
  layout: VectorsLayout,
  arrows: readonly Arrow[],
  names: ReadonlyMap<string, string>,
  scale: number,
  rings: readonly { id: string; text: string; value: number }[],
): Map<string, Point> {
  const { small, family } = layout.font;
  const lines: Segment[] = arrows.map(({ from, to }) => ({ from: toPoint(from, scale), to: toPoint(to, scale) }));
  const requests: LabelRequest[] = arrows.map(({ source }, index) => {
    const size = textSize(names.get(source) ?? source, small, family, LABEL_WEIGHT);
    return { id: source, size, candidates: besideSegment(lines[index]!, size), line: lines[index]! };
  });
  // What is left matters most, so it chooses first.
  requests.reverse();
  const { radius } = layout;
  for (const { id, text, value } of rings) {
    const size = textSize(text, small, family);
    // The outermost figure stands inside its circle, the others on theirs.
    const distance = Math.min(value * scale, radius - 0.75 * size.width);
    requests.push({ id, size, candidates: RING_LABELS.map((degrees) => polar(degrees, distance)) });
  }
  if (layout.half < LEAST_FOR_NAMES) requests.splice(0, arrows.length);
  return placeLabels(requests, layout.taken, lines, { left: -radius, right: radius, top: -radius, bottom: radius });
}

/** Directions in which the figure of a ring may stand, best first. */
const RING_LABELS = [292.5, 247.5, 67.5, 112.5, 337.5, 22.5, 202.5, 157.5];

/** Centres beside a segment: by its middle, then nearer the tip and the tail, then beyond the tip; on both sides. */
function besideSegment({ from, to }: Segment, { width, height }: TextSize): Point[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const normal = { x: along.y, y: -along.x };
  const reach = (Math.abs(normal.x) * width + Math.abs(normal.y) * height) / 2 + 5;
  const centres: Point[] = [];
  for (const extra of [0, 14, 30]) {
    for (const share of [0.5, 0.75, 0.25, 1, 0]) {
      for (const side of [1, -1]) {
        centres.push({
          x: from.x + along.x * length * share + normal.x * side * (reach + extra),
          y: from.y + along.y * length * share + normal.y * side * (reach + extra),
        });
      }
    }
    const beyond = (Math.abs(along.x) * width + Math.abs(along.y) * height) / 2 + 8 + extra;
    centres.push({ x: to.x + along.x * beyond, y: to.y + along.y * beyond });
  }
  return centres;
}
