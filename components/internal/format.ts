import { clockFromSite, meridian, site, siteName } from '../../core/numbers.js';
import type { Astigmatism, EyeSide } from '../../core/numbers.js';
import { ENGLISH } from './language/language.js';
import type { Language } from './language/language.js';
import { placeWords } from './place.words.js';

/** A space that keeps number and unit on one line. */
export const NBSP = '\u00a0';

/** How figures are written in another language than English. */
export interface NumberStyle {
  decimal(value: number, digits: number, lang: string): string;
  percent(share: number, lang: string): string;
  isolated(figure: string, lang: string): string;
  withUnit(number: string, unit: string, lang: string): string;
}

/** Comes with the other languages; no page in English needs it. */
let foreign: NumberStyle | null = null;

/** From now on this writes the figures of every language but English. */
export function writeForeignBy(style: NumberStyle): void {
  foreign = style;
}

/** A number in the language of the reader, with a fixed number of decimals. Never prints a minus zero. */
export function decimal(value: number, digits: number, lang = 'en'): string {
  const shown = Math.abs(value) < 0.5 * 10 ** -digits ? 0 : value;
  // In English both ways print the same, and Intl takes ten times as long in the path of a drag.
  return lang === 'en' || !foreign ? shown.toFixed(digits) : foreign.decimal(shown, digits, lang);
}

/** `83 %`, of a share of 0.83. */
export function percent(share: number, lang = 'en'): string {
  return lang === 'en' || !foreign ? `${decimal(100 * share, 0)}${NBSP}%` : foreign.percent(share, lang);
}

/** A figure as one piece in a text that runs to the left: else `1 D @ 180°` would come out in another order. */
export function isolated(figure: string, lang = 'en'): string {
  return lang === 'en' || !foreign ? figure : foreign.isolated(figure, lang);
}

/** `0.61 D` */
export function dioptres(value: number, lang?: string): string {
  return withUnit(decimal(value, 2, lang), 'D', lang);
}

/** A number that has been printed, with its unit behind it. */
export function withUnit(number: string, unit: string, lang = 'en'): string {
  if (lang !== 'en' && foreign) return foreign.withUnit(number, unit, lang);
  return number + (unit === '°' || unit === '' ? '' : NBSP) + unit;
}

/** `+0.61 D`, with a true minus sign. */
export function signedDioptres(value: number, lang?: string): string {
  const rounded = Math.abs(value) < 0.005 ? 0 : value;
  const sign = rounded > 0 ? '+' : rounded < 0 ? '−' : '';
  return isolated(sign + dioptres(Math.abs(rounded), lang), lang);
}

/** `2.4 mm`, `2.75 mm`: as many decimals as are needed, one at least. */
export function millimetres(value: number, lang?: string): string {
  return withUnit(millimetreNumber(value, lang), 'mm', lang);
}

/** The same without its unit. */
export function millimetreNumber(value: number, lang?: string): string {
  return decimal(value, Math.abs(value * 10 - Math.round(value * 10)) < 1e-9 ? 1 : 2, lang);
}

/** A meridian as printed on a dial: 1–180°, never 0. Tenths only where there are some. */
export function meridianText(degrees: number, lang?: string): string {
  return angle(printedMeridian(degrees), lang);
}

/** The same as a number. */
export function printedMeridian(degrees: number): number {
  return meridian(Math.round(degrees * 10) / 10);
}

/** A site on the limbus as printed: 0–359°. */
export function siteText(degrees: number, lang?: string): string {
  return angle(site(Math.round(degrees * 10) / 10), lang);
}

/** An angle as it is. */
export function angle(degrees: number, lang?: string): string {
  return withUnit(angleNumber(degrees, lang), '°', lang);
}

/** An angle without its unit, for texts that say "degrees". */
export function angleNumber(degrees: number, lang?: string): string {
  return decimal(degrees, Number.isInteger(degrees) ? 0 : 1, lang);
}

/** `1.00 D @ 180°`; a magnitude that prints as nothing has no meridian, and the meridian is rounded to full degrees. */
export function astigmatismText({ magnitude, meridian: along }: Astigmatism, lang?: string): string {
  if (magnitude < 0.005) return dioptres(0, lang);
  return isolated(`${dioptres(magnitude, lang)}${NBSP}@${NBSP}${meridianText(Math.round(along), lang)}`, lang);
}

/** `9 o'clock`, `half past 10` and, between, `10:20 o'clock`: as hands on the face of a clock would show it. */
export function clockText(degrees: number, language: Language = ENGLISH): string {
  const total = Math.round(clockFromSite(degrees) * 60);
  const hour = Math.floor(total / 60) % 12 || 12;
  const past = total % 60;
  const minutes = String(past).padStart(2, '0');
  return language.say(placeWords)(past === 0 ? 'hour' : past === 30 ? 'halfPast' : 'minutes', { hour, minutes });
}

/** `temporal` and the other names of places on the limbus. */
export function placeText(degrees: number, eye: EyeSide, language: Language = ENGLISH): string {
  return language.say(placeWords)(siteName(degrees, eye));
}

/** `180 degrees, temporal, 9 o'clock`: a site as it is spoken. */
export function spokenSite(degrees: number, eye: EyeSide, language: Language = ENGLISH): string {
  const shown = site(Math.round(degrees * 10) / 10);
  const values = { degrees: angleNumber(shown, language.numbers), place: placeText(shown, eye, language), clock: clockText(shown, language) };
  return language.say(placeWords)('spokenSite', values);
}

/** A text as a sentence begins. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
