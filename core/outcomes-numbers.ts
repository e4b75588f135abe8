/** How a number in a cell is written. Nothing in a table of results reaches 1000, so no comma and no point parts thousands. */
const NUMBER = /^([+-]?)(\d*)(?:([.,])(\d*))?\s*(.*)$/;

/** The frequent case, which needs no second look. */
const SIMPLE = /^\d{1,3}(?:[.,]\d+)?$/;

/** Written for "nothing". */
const NOTHING = /^(?:[-–—]{1,2}|n\/?a)$/i;

const UNITS = [
  ['', /^$/],
  ['D', /^(?:d|dptr?|diopt\w*|屈光度|ديوبتر)\.?$/i],
  ['mm', /^(?:mm|毫米|مم|ملم)$/i],
  ['°', /^(?:°|º|deg\w*|grad\w*|度)\.?$/i],
  ['years', /^(?:y|yrs?|years?|j|jahre?|años|ans|岁|سنة|عام)\.?$/i],
] as const;

export interface Written {
  value: number;
  /** Unit that stands behind the number, '' without one. */
  unit: (typeof UNITS)[number][0];
  decimal: '.' | ',' | '';
}

/** A cell without what surrounds it, or the apostrophe that keeps it from being a formula; '' where it says that there is nothing. */
export function trimmed(cell: string): string {
  let text = cell.trim();
  if (text.startsWith("'")) text = text.slice(1).trim();
  return text.length <= 3 && NOTHING.test(text) ? '' : text;
}

/**
 * The number in a cell, or null where it is none. The rule for decimals needs no look at the rest of the file: one comma or
 * one point is the decimal sign, a number with two of them is refused. So 1,234 is 1.234, for 1234 is no dioptre and no degree.
 */
export function numberIn(text: string): Written | null {
  if (SIMPLE.test(text)) {
    if (text.includes(',')) return { value: Number(text.replace(',', '.')), unit: '', decimal: ',' };
    return { value: Number(text), unit: '', decimal: text.includes('.') ? '.' : '' };
  }
  const found = NUMBER.exec(western(text));
  if (!found) return null;
  const [, sign, whole = '', mark = '', part = '', rest = ''] = found;
  if (whole + part === '') return null;
  const unit = UNITS.find(([, pattern]) => pattern.test(rest))?.[0];
  if (unit === undefined) return null;
  const value = Number(`${whole}.${part}`);
  return { value: sign === '-' ? -value + 0 : value, unit, decimal: mark as Written['decimal'] };
}

/** Digits and signs of other scripts in their western form. */
function western(text: string): string {
  return text
    .normalize('NFKC')
    .replace(/[٠-٩۰-۹]/g, (digit) => String(digit.charCodeAt(0) & 15))
    .replace(/[٫،、]/g, ',')
    .replace(/[−‐‑]/g, '-');
}
