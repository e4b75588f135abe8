import { FOCUSES } from '../../core/eye-planned.js';
import type { Focus } from '../../core/eye-planned.js';
import type { Limits } from '../../core/numbers.js';
import { DECIMAL } from '../internal/decimal.js';

export const SHOWN = ['after', 'before'] as const;
export type Shown = (typeof SHOWN)[number];

/** Places that the screen can follow. */
export const STOPS = ['front-line', 'circle', 'back-line', 'retina'] as const;
export type Stop = (typeof STOPS)[number];

export const LIMITS_HERE = {
  pupil: { min: 1, max: 9, unit: 'mm' },
  screen: { min: -10, max: 10, unit: 'mm' },
  turn: { min: -360, max: 360, unit: '°' },
  tilt: { min: -45, max: 45, unit: '°' },
} as const satisfies Record<string, Limits>;

/** What is drawn, and from where it is seen. */
export interface Settings {
  shows: Shown;
  inFocus: Focus;
  /** mm. */
  pupil: number;
  /** A place that it follows, or mm behind the retina. */
  screen: Stop | number;
  /** Degrees from the front towards the side. */
  turn: number;
  /** Degrees above the axis. */
  tilt: number;
}

/** As the properties of the element hold them. */
export type GivenSettings = { [Name in keyof Settings]: Settings[Name] | string };

export type SettingName = keyof Settings;

export interface Refusal {
  setting: SettingName;
  value: unknown;
}

export const USUAL: Settings = { shows: 'after', inFocus: 'least-blur', pupil: 3, screen: 'retina', turn: 60, tilt: 18 };

export const WORDS: Partial<Record<SettingName, readonly string[]>> = { shows: SHOWN, inFocus: FOCUSES, screen: STOPS };

/** Reads the settings. For each that cannot be taken its last good value stands. */
export function takeSettings(given: GivenSettings, last: Settings): { settings: Settings; refusals: Refusal[] } {
  const refusals: Refusal[] = [];
  const settings = { ...last };
  for (const setting of Object.keys(USUAL) as SettingName[]) {
    const value = given[setting];
    const words = WORDS[setting];
    const limits = (LIMITS_HERE as Partial<Record<SettingName, Limits>>)[setting];
    const fits = words?.includes(value as string) || (limits && typeof value === 'number' && value >= limits.min && value <= limits.max);
    if (fits) Object.assign(settings, { [setting]: value });
    else refusals.push({ setting, value });
  }
  return { settings, refusals };
}

/** An attribute as a number where it is one; another text as it is, and none as the usual value. */
export function numeric(usual: number | string): { fromAttribute(text: string | null): number | string } {
  return { fromAttribute: (text) => (text === null ? usual : DECIMAL.test(text.trim()) ? Number(text) : text) };
}

/** A direction as sliders have it, -180 to 180. */
export function turned(degrees: number): number {
  return ((((degrees + 180) % 360) + 360) % 360) - 180;
}
