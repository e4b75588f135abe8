import { DECIMAL } from '../internal/decimal.js';

/** What may trail a number in a field of that unit. Compatibility forms have been unified before. */
const TRAILING: Record<string, RegExp> = {
  D: /(?:d|dpt)$/i,
  mm: /mm$/i,
  '°': /°$/,
  µm: /(?:μm|um)$/i,
  years: /(?:years?|y|jahre?|años?|ans?|岁|سنة|سنوات|عام[اًا]*)$/i,
};

/**
 * The number in a text as people write it: decimal point or comma, spaces, Arabic digits, its own unit. `bare` is what is
 * left to read.
 */
export function readNumber(text: string, unit: string): { bare: string; value: number | null } {
  const bare = text
    .normalize('NFKC')
    // White space, and the marks that keep a copied figure together in a text that runs to the left.
    .replace(/[\s\p{Cf}]/gu, '')
    .replace(/[٠-٩۰-۹]/g, (digit) => String(digit.charCodeAt(0) & 15))
    .replace('−', '-')
    .replace(/[,٫]/, '.')
    .replace(TRAILING[unit] ?? /$^/, '');
  return { bare, value: DECIMAL.test(bare) ? Number(bare) : null };
}

/** Whether more digits could still bring `bare` between the limits, so that it is too early to call it wrong. */
export function isUnfinished(bare: string, min: number, max: number): boolean {
  if (bare.startsWith('-')) return min < 0 && isUnfinished(bare.slice(1), Math.max(0, -max), -min);
  if (bare === '' || bare === '+' || bare === '.') return true;
  if (!DECIMAL.test(bare)) return false;
  const start = Number(bare);
  const point = bare.indexOf('.');
  if (point >= 0) return start <= max && start + 10 ** (point + 1 - bare.length) > min;
  for (let power = 0; power <= 4 && start * 10 ** power <= max; power += 1) {
    if ((start + 1) * 10 ** power > min) return true;
  }
  return false;
}
