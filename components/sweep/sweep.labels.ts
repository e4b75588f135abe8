import { GOOD } from '../../core/numbers.js';
import type { Box, Point } from '../internal/geometry.js';
import { placeLabels } from '../internal/labels.js';
import type { LabelRequest, Segment } from '../internal/labels.js';
import { EDGE } from '../internal/layout.js';
import type { Label } from '../internal/layout.js';
import type { Language } from '../internal/language/language.js';
import { textSize } from '../internal/measure.js';
import type { TextSize } from '../internal/measure.js';
import type { Sample } from './sweep.parts.js';
import { BEFORE_AXIS, xOf, yOf } from './sweep.layout.js';
import type { SweepLayout } from './sweep.layout.js';
import { goodText, stepText } from './sweep.speech.js';
import type { SiteLabel, ToldSite } from './sweep.speech.js';
import { sweepWords } from './sweep.words.js';

/** A label in the plot, by its centre. */
export interface PlacedLabel extends Point {
  id: SiteLabel['id'];
  text: string;
}

/** Room that labels leave above and below the curve, px: the marker, which is on it everywhere, then never covers one. */
const CLEAR = 11;

/** From the line of a site to a label beside it, px. */
const BESIDE = 6;

/** How much further from the curve a label is tried each time, over its height. */
const LEVEL = 0.6;

/** Least distance of two figures on the vertical axis over the size of their text. */
const FIGURES_APART = 1.25;

/** The name of the best site is in bold. */
const WEIGHT: Record<SiteLabel['id'], number> = { best: 600, temporal: 400, superior: 400 };

/** Figures of the vertical axis. That of the good line always stands; others give way to it. */
export function axisLabels(layout: SweepLayout, steps: readonly number[], end: number, language: Language): Label[] {
  const x = layout.left - BEFORE_AXIS;
  const good = yOf(layout, GOOD, end);
  const others = steps.map((value) => ({ text: stepText(value, language), x, y: yOf(layout, value, end), anchor: 'end' as const }));
  const free = others.filter(({ y }) => Math.abs(y - good) >= FIGURES_APART * layout.font.small);
  return [...free, { text: goodText(language), x, y: good, anchor: 'end' }];
}

/**
 * Names of the best, the temporal and the superior site beside their lines. They do not depend on the present incision,
 * so they stand still while it is dragged.
 */
export function placeSiteLabels(layout: SweepLayout, curve: readonly Sample[], labels: readonly SiteLabel[], end: number): PlacedLabel[] {
  const guides = new Map(labels.map(({ id, at }) => [id, guideOf(layout, at)]));
  const along = boxesAlong(layout, curve, end);
  const { left, right, top, bottom, font } = layout;
  const placed = [0, 1, 2].map((brevity) => {
    const texts = new Map(labels.map(({ id, texts: known }) => [id, known[brevity] ?? known.at(-1)!]));
    const requests: LabelRequest[] = labels.map(({ id, at }) => {
      const size = textSize(texts.get(id)!, font.small, font.family, WEIGHT[id]);
      return { id, size, candidates: candidatesFor(layout, at, yOf(layout, at.remaining, end), size), line: guides.get(id)! };
    });
    const places = placeLabels(requests, along, [...guides.values()], { left, right, top, bottom });
    return labels.flatMap(({ id }) => (places.has(id) ? [{ id, text: texts.get(id)!, ...places.get(id)! }] : []));
  });
  // The fullest that leaves out as few labels as can be.
  const most = Math.max(...placed.map(({ length }) => length));
  return placed.find(({ length }) => length === most)!;
}

/** The figure of the present incision above its line, moved inwards at the edges. */
export function flagLabel(layout: SweepLayout, { site }: Sample, told: ToldSite, language: Language): Label | null {
  const say = language.say(sweepWords);
  const { small, family } = layout.font;
  const [from, to] = [layout.left, layout.width - EDGE];
  for (const text of [say('flag', told), say('flagShort', told)]) {
    const { width } = textSize(text, small, family, 600);
    if (width > to - from) continue;
    const x = Math.min(to - width / 2, Math.max(from + width / 2, xOf(layout, site)));
    return { text, x, y: layout.flag, anchor: 'middle' };
  }
  return null;
}

function guideOf(layout: SweepLayout, { site }: Sample): Segment {
  const x = xOf(layout, site);
  return { from: { x, y: layout.top }, to: { x, y: layout.bottom } };
}

/** Where no label may lie: boxes around the curve, one between each two of its points. */
function boxesAlong(layout: SweepLayout, curve: readonly Sample[], end: number): Box[] {
  return curve.slice(1).map((to, index) => {
    const from = curve[index]!;
    const [a, b] = [yOf(layout, from.remaining, end), yOf(layout, to.remaining, end)];
    return { left: xOf(layout, from.site), right: xOf(layout, to.site), top: Math.min(a, b) - CLEAR, bottom: Math.max(a, b) + CLEAR };
  });
}

/** Centres beside the line of a site, then on it: from the curve upwards and downwards, and along the edges of the plot. */
function candidatesFor(layout: SweepLayout, { site }: Sample, y: number, { width, height }: TextSize): Point[] {
  const { top, bottom } = layout;
  const x = xOf(layout, site);
  const rows: number[] = [];
  for (let away = CLEAR + 3 + height / 2; away < bottom - top; away += LEVEL * height) rows.push(y - away, y + away);
  rows.push(top + height / 2, bottom - height / 2);
  const within = rows.filter((row) => row >= top + height / 2 && row <= bottom - height / 2);
  return within.flatMap((row) => [1, -1, 0].map((shift) => ({ x: x + shift * (width / 2 + BESIDE), y: row })));
}
