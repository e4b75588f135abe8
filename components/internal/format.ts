import { clockFromSite, meridian, site, siteName } from '../../core/numbers.js';
import type { Astigmatism, EyeSide } from '../../core/numbers.js';

/** A space that keeps number and unit on one line. */
const NBSP = '\u00a0';

const formats = new Map<string, Intl.NumberFormat>();

/** A number in the language of the reader, with a fixed number of decimals. Never prints a minus zero. */
export function decimal(value: number, digits: number, lang = 'en'): string {
  const shown = Math.abs(value) < 0.5 * 10 ** -digits ? 0 : value;
  // In English both ways print the same, and Intl takes ten times as long in the path of a drag.
  if (lang === 'en') return shown.toFixed(digits);
  const key = `${lang} ${digits}`;
  let format = formats.get(key);
  if (!format) {
    format = new Intl.NumberFormat(lang, { minimumFractionDigits: digits, maximumFractionDigits: digits, useGrouping: false });
    formats.set(key, format);
  }
  return format.format(shown);
}

/** `0.61 D` */
export function dioptres(value: number, lang?: string): string {
  return `${decimal(value, 2, lang)}${NBSP}D`;
}

/** `+0.61 D`, with a true minus sign. */
export function signedDioptres(value: number, lang?: string): string {
  const rounded = Math.abs(value) < 0.005 ? 0 : value;
  const sign = rounded > 0 ? '+' : rounded < 0 ? '−' : '';
  return sign + dioptres(Math.abs(rounded), lang);
}

/** `2.4 mm`, `2.75 mm`: as many decimals as are needed, one at least. */
export function millimetres(value: number, lang?: string): string {
  return `${decimal(value, Math.abs(value * 10 - Math.round(value * 10)) < 1e-9 ? 1 : 2, lang)}${NBSP}mm`;
}

/** A meridian as printed on a dial: 1–180°, never 0. Tenths only where there are some. */
export function meridianText(degrees: number, lang?: string): string {
  const rounded = Math.round(degrees * 10) / 10;
  return angle(meridian(rounded), lang);
}

/** A site on the limbus as printed: 0–359°. */
export function siteText(degrees: number, lang?: string): string {
  return angle(site(Math.round(degrees * 10) / 10), lang);
}

/** An angle as it is. */
export function angle(degrees: number, lang?: string): string {
  return `${decimal(degrees, Number.isInteger(degrees) ? 0 : 1, lang)}°`;
}

/** `1.00 D @ 180°`; a magnitude that prints as nothing has no meridian. `whole` rounds the meridian to full degrees. */
export function astigmatismText({ magnitude, meridian: along }: Astigmatism, lang?: string): string {
  if (magnitude < 0.005) return dioptres(0, lang);
  return `${dioptres(magnitude, lang)}${NBSP}@${NBSP}${meridianText(Math.round(along), lang)}`;
}

/** `9 o'clock`, `half past 10` and, between, `20 past 10`: minutes of the clock face as hands would show them. */
export function clockText(degrees: number): string {
  const minutes = Math.round(clockFromSite(degrees) * 60);
  const hour = Math.floor(minutes / 60) % 12 || 12;
  const past = minutes % 60;
  if (past === 0) return `${hour} o'clock`;
  return past === 30 ? `half past ${hour}` : `${hour}:${String(past).padStart(2, '0')} o'clock`;
}

/** `180 degrees, temporal, 9 o'clock`: a site as it is spoken. */
export function spokenSite(degrees: number, eye: EyeSide): string {
  const shown = site(Math.round(degrees * 10) / 10);
  return `${Number.isInteger(shown) ? shown : shown.toFixed(1)} degrees, ${siteName(shown, eye)}, ${clockText(shown)}`;
}

/** A text as a sentence begins. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
