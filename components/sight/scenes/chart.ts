import { gapSize } from '../../../core/sight-optotype.js';
import type { GapDirection } from '../../../core/sight-optotype.js';
import { CHART_ACUITIES, CHART_DISTANCE, SCENES, SIDE } from '../sight.scenes.js';
import { LETTERS, ringPath } from './letters.js';
import type { Letter } from './letters.js';
import { WHOLE } from './shapes.js';
import type { Drawing, Shape } from './shapes.js';

/** The letters of each line, and the gaps of its rings. */
const LINES: readonly (readonly [letters: string, gaps: readonly GapDirection[]])[] = [
  ['E', [0]],
  ['NZ', [135, 270]],
  ['HVD', [45, 180, 90]],
  ['UPFO', [270, 0, 225, 90]],
  ['TZLEN', [180, 315, 90, 0, 135]],
  ['DHPVU', [90, 45, 270, 180, 315]],
  ['FNOTZ', [0, 225, 180, 90, 270]],
  ['ZVUHL', [270, 90, 135, 0, 180]],
];

const PAPER = '#f4f4f4';
const INK = '#0c0c0c';

/** Above the first line, and at least between two lines, px. */
const TOP = 30;
const LEAST_GAP = 22;

/** Letters on the left, rings on the right; the space between signs is as wide as a sign, on large lines less. */
export function chart(): Drawing {
  const shapes: Shape[] = [{ path: WHOLE, paint: PAPER }];
  let y = TOP;
  LINES.forEach(([letters, gaps], i) => {
    const unit = (gapSize(CHART_DISTANCE, CHART_ACUITIES[i]!) * SIDE) / SCENES.chart.width!;
    const paths = [...letters].map((letter) => LETTERS[letter as Letter]);
    shapes.push(...row(paths, SIDE * 0.26, y, unit), ...row(gaps.map(ringPath), SIDE * 0.74, y, unit));
    y += 5 * unit + Math.max(LEAST_GAP, 1.2 * unit);
  });
  return { shapes };
}

function row(paths: readonly string[], middle: number, y: number, unit: number): Shape[] {
  const step = unit * (unit < 6 ? 10 : 8);
  const first = middle - ((paths.length - 1) * step) / 2 - 2.5 * unit;
  return paths.map((path, i) => ({ path, paint: INK, at: [first + i * step, y, unit] }));
}
