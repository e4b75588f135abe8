import { NBSP } from '../format.js';
import type { NumberStyle } from '../format.js';
import { directionOf } from './direction.js';

const formats = new Map<string, Intl.NumberFormat>();

function formatOf(lang: string, kind: string, options: Intl.NumberFormatOptions): Intl.NumberFormat {
  const key = `${lang} ${kind}`;
  let format = formats.get(key);
  if (!format) formats.set(key, (format = new Intl.NumberFormat(lang, options)));
  return format;
}

const OTHER_SCRIPT = /[\u0530-\uffff]/;

/** Figures in every language but English. */
export const FOREIGN_NUMBERS: NumberStyle = {
  decimal(value, digits, lang) {
    return formatOf(lang, `${digits}`, { minimumFractionDigits: digits, maximumFractionDigits: digits, useGrouping: false })
      .format(value)
      // Marks of direction would stand in a field in which the number can be edited.
      .replace(/[\u061c\u200e\u200f]/g, '');
  },
  percent(share, lang) {
    return this.isolated(formatOf(lang, '%', { style: 'percent' }).format(share), lang);
  },
  isolated(figure, lang) {
    return directionOf(lang) === 'rtl' ? `\u2066${figure}\u2069` : figure;
  },
  withUnit(number, unit, lang) {
    if (unit === '°' || unit === '') return this.isolated(number + unit, lang);
    // A unit that is a word of the language runs with it.
    return OTHER_SCRIPT.test(unit) ? this.isolated(number, lang) + NBSP + unit : this.isolated(number + NBSP + unit, lang);
  },
};
