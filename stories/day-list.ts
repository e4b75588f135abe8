import type { EyePlan } from '../core/index.js';

/** One invented eye of the day list. */
export interface DayListEye {
  name: string;
  plan: EyePlan;
  /** Why it is worth a look, in one plain sentence. */
  interest: string;
}

/** Stands on every page that shows one of these eyes. */
export const INVENTED = 'Invented eyes of a made-up day list; no patient is behind them.';

/**
 * The day list of a seaside eye unit that does not exist. Between them the six eyes are right and left, with, against and
 * oblique to the rule, low and high; one of them should have no arcs at all, and one has next to nothing to correct.
 */
export const DAY_LIST = [
  {
    name: 'Alder',
    plan: {
      eye: 'right',
      flatK: 42.75,
      steepK: 43.65,
      steepMeridian: 84,
      age: 58,
      backSurface: 'typical',
      incisionSite: 180,
      incisionWidth: 2.4,
    },
    interest: 'Low and with the rule: the back of the cornea takes some of it away, and an entry at the temporal side gives half of that back.',
  },
  {
    name: 'Birch',
    plan: {
      eye: 'left',
      flatK: 43.25,
      steepK: 44.75,
      steepMeridian: 40,
      age: 66,
      backSurface: 'typical',
      incisionSite: 0,
      incisionWidth: 2.4,
      arcSite: 40,
      arcLength: 45,
      arcCount: 2,
      arcDepth: 540,
      arcMethod: 'laser',
      localThickness: 680,
    },
    interest: 'Oblique: an entry at the side hardly changes how much there is, but turns where it is steepest; the pair of arcs does the work.',
  },
  {
    name: 'Cedar',
    plan: {
      eye: 'right',
      flatK: 43,
      steepK: 44,
      steepMeridian: 180,
      age: 70,
      incisionSite: 180,
      incisionWidth: 2.75,
      arcSite: 0,
      arcLength: 30,
      arcCount: 1,
      arcDepth: 500,
    },
    interest: 'Common practice against the rule: an entry on the steep meridian and one clock hour of arc on the opposite, nasal side.',
  },
  {
    name: 'Dogwood',
    plan: {
      eye: 'left',
      flatK: 41.5,
      steepK: 44.75,
      steepMeridian: 95,
      age: 72,
      backSurface: '0.35@178',
      incisionSite: 0,
      incisionWidth: 2.2,
      lensCylinder: 2.5,
      lensMeridian: 94,
    },
    interest: 'High and with the rule, with a measured back surface: more than arcs can do, so a toric lens carries it.',
  },
  {
    name: 'Elm',
    plan: {
      eye: 'right',
      flatK: 44,
      steepK: 49.25,
      steepMeridian: 32,
      age: 47,
      incisionSite: 160,
      incisionWidth: 2.4,
      arcSite: 32,
      arcLength: 60,
      arcCount: 2,
      arcDepth: 480,
      localThickness: 640,
    },
    interest: 'Too steep and too unequal for arcs: they are drawn here only so that the caution against them shows.',
  },
  {
    name: 'Fir',
    plan: {
      eye: 'left',
      flatK: 43.42,
      steepK: 43.5,
      steepMeridian: 12,
      age: 76,
      incisionSite: 90,
      incisionWidth: 3,
    },
    interest: 'Next to nothing to correct: the entry itself is the largest step, and leaves more than there was.',
  },
] as const satisfies readonly DayListEye[];

export type EyeName = (typeof DAY_LIST)[number]['name'];

export const EYE_NAMES: readonly EyeName[] = DAY_LIST.map(({ name }) => name);

export function eyeOf(name: EyeName): DayListEye {
  return DAY_LIST.find((eye) => eye.name === name)!;
}
