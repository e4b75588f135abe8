import type { Limits } from '../../core/numbers.js';

/** What can be looked at; `picture` is the page's own. */
export const SCENE_NAMES = ['chart', 'reading', 'street', 'shelf', 'picture'] as const;
export type SceneName = (typeof SCENE_NAMES)[number];

/** Those that are drawn here. */
export type DrawnScene = Exclude<SceneName, 'picture'>;

interface SceneFacts {
  /** Width of what the picture shows, mm, and from where it can be looked at, m; null where only an angle is stated. */
  width: number | null;
  distance: (Limits & { usual: number }) | null;
  /** Visual angle of the whole width where no distance is stated, degrees. */
  degrees: number;
  /** Usual pupil, mm: by day and in a lit room about 3, at dusk 5 to 6. Common practice; in old age it is smaller. */
  pupil: number;
}

const DAY = 3;
const DUSK = 5.5;

/** A picture of the page's own spans this much when nothing else is said: about a page held at arm's length. Assumed. */
const OWN_DEGREES = 20;

export const SCENES: Readonly<Record<SceneName, SceneFacts>> = {
  chart: { width: 400, distance: { min: 3, max: 8, unit: 'm', usual: 6 }, degrees: 0, pupil: DAY },
  reading: { width: 60, distance: { min: 0.25, max: 1, unit: 'm', usual: 0.4 }, degrees: 0, pupil: DAY },
  street: { width: null, distance: null, degrees: 20, pupil: DUSK },
  shelf: { width: 600, distance: { min: 1, max: 6, unit: 'm', usual: 3 }, degrees: 0, pupil: DAY },
  picture: { width: null, distance: null, degrees: OWN_DEGREES, pupil: DAY },
};

/** Limits of the angle that the page's own picture may span. Narrower, a strong blur would be wider than the picture. */
export const OWN_ANGLE: Limits = { min: 5, max: 60, unit: '°' };

/** Distance for which the chart is drawn, m, and the acuities that read its lines there. */
export const CHART_DISTANCE = 6;
export const CHART_ACUITIES = [0.1, 0.2, 0.32, 0.5, 0.63, 0.8, 1, 1.25] as const;

/** Height of the x in each paragraph of the reading card, mm. The third is about that of a newspaper. */
export const X_HEIGHTS = [3, 2, 1.45, 0.9, 0.58] as const;

/** Longer side of every picture, px. */
export const SIDE = 512;

const RADIANS = Math.PI / 180;

/** Visual angle of a whole picture, degrees. The few degrees are shared out evenly among the pixels. */
export function sceneDegrees(scene: SceneName, distance: number, ownDegrees: number): number {
  const { width, degrees } = SCENES[scene];
  if (scene === 'picture') return ownDegrees;
  return width === null ? degrees : (2 * Math.atan(width / 2000 / distance)) / RADIANS;
}

/** Acuities that read the lines of the chart from a distance in m. */
export function chartAcuities(distance: number): number[] {
  return CHART_ACUITIES.map((acuity) => (acuity * distance) / CHART_DISTANCE);
}
