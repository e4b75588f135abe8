import type { Limits } from '../../core/numbers.js';
import { SIGHT_LIMITS } from '../../core/sight-limits.js';
import { DECIMAL } from '../internal/decimal.js';
import { NOTATIONS } from './sight.acuity.js';
import type { Notation } from './sight.acuity.js';
import { FOCUSES } from './sight.optics.js';
import type { Focus } from './sight.optics.js';
import { OWN_ANGLE, SCENES, SCENE_NAMES } from './sight.scenes.js';
import type { SceneName } from './sight.scenes.js';

export const VIEWS = ['pair', 'divider'] as const;
export type ViewName = (typeof VIEWS)[number];

/** Settings that are numbers. What is no number is kept as it was written, to be refused with its own text. */
export type NumberSetting = 'distance' | 'pupil' | 'pictureAngle';
export type WordSetting = 'scene' | 'view' | 'inFocus' | 'acuity';
export type SettingName = NumberSetting | WordSetting;

/** As the properties of the element hold them; null and '' stand for the usual. */
export interface GivenSettings {
  scene: string;
  view: string;
  inFocus: string;
  acuity: string;
  distance: number | string | null;
  pupil: number | string | null;
  pictureAngle: number | string | null;
  glasses: boolean;
}

/** What the pictures are made with. */
export interface Settings {
  scene: SceneName;
  view: ViewName;
  inFocus: Focus;
  /** Null: as is usual in the language. */
  acuity: Notation | null;
  distance: number;
  pupil: number;
  pictureAngle: number;
  glasses: boolean;
}

export interface Refusal {
  setting: SettingName;
  value: unknown;
  /** What would be accepted: a range, or one of some words. */
  accepted: Limits | readonly string[];
}

export interface TakenSettings {
  settings: Settings;
  refusals: readonly Refusal[];
}

export const USUAL: Settings = { scene: 'chart', view: 'pair', inFocus: 'least-blur', acuity: null, ...usualOf('chart'), pictureAngle: SCENES.picture.degrees, glasses: false };

/** Reads the settings. For each that cannot be taken its last good value stands, where it still fits the scene; else the usual one. */
export function takeSettings(given: GivenSettings, { settings: last }: TakenSettings): TakenSettings {
  const refusals: Refusal[] = [];
  const word = <Word extends string>(setting: WordSetting, choices: readonly Word[], good: Word): Word => {
    const value = given[setting];
    if ((choices as readonly string[]).includes(value)) return value as Word;
    refusals.push({ setting, value, accepted: choices });
    return good;
  };
  const number = (setting: NumberSetting, limits: Limits, usual: number, good: number): number => {
    const value = given[setting] ?? usual;
    if (fits(value, limits)) return value;
    refusals.push({ setting, value, accepted: limits });
    return fits(good, limits) ? good : usual;
  };
  const scene = word('scene', SCENE_NAMES, last.scene);
  const usual = usualOf(scene);
  const known = scene === last.scene ? last : usual;
  const limits = distanceLimits(scene);
  return {
    refusals,
    settings: {
      scene,
      view: word('view', VIEWS, last.view),
      inFocus: word('inFocus', FOCUSES, last.inFocus),
      acuity: given.acuity === '' ? null : word<Notation>('acuity', NOTATIONS, last.acuity!) ?? null,
      // What the scene does not ask for need not be right.
      distance: limits ? number('distance', limits, usual.distance, known.distance) : usual.distance,
      pupil: number('pupil', SIGHT_LIMITS.pupil, usual.pupil, last.pupil),
      pictureAngle: scene === 'picture' ? number('pictureAngle', OWN_ANGLE, SCENES.picture.degrees, last.pictureAngle) : last.pictureAngle,
      glasses: given.glasses,
    },
  };
}

/** Where a scene can be looked at from; null where only its angle is stated. */
export function distanceLimits(scene: SceneName): Limits | null {
  return SCENES[scene].distance;
}

/** Limits of a number in a scene. */
export function limitsOf(setting: NumberSetting, scene: SceneName): Limits {
  if (setting === 'pupil') return SIGHT_LIMITS.pupil;
  return setting === 'pictureAngle' ? OWN_ANGLE : distanceLimits(scene)!;
}

function usualOf(scene: SceneName): Pick<Settings, 'distance' | 'pupil'> {
  const { distance, pupil } = SCENES[scene];
  return { distance: distance?.usual ?? 1, pupil };
}

function fits(value: number | string, { min, max }: Limits): value is number {
  return typeof value === 'number' && value >= min && value <= max;
}

export function isNumberSetting(name: string): name is NumberSetting {
  return name === 'distance' || name === 'pupil' || name === 'pictureAngle';
}

/** An attribute as a number; another text as it is, to be refused. */
export const numberConverter = {
  fromAttribute: (text: string | null): unknown => (text === null ? null : DECIMAL.test(text.trim()) ? Number(text) : text),
};

/** What was typed into a field: nothing for the usual, decimal point or comma, digits of the reader. */
export function typedNumber(text: string): number | string | null {
  const bare = text
    .normalize('NFKC')
    .replace(/[\s\p{Cf}]/gu, '')
    .replace(/[٠-٩۰-۹]/g, (digit) => String(digit.charCodeAt(0) & 15))
    .replace(/[,٫]/, '.')
    .replace(/(?:mm|m|°)$/i, '');
  if (bare === '') return null;
  return DECIMAL.test(bare) ? Number(bare) : text.trim();
}
