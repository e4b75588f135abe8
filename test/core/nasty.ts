/** Texts that a page, a form or a slip of the keyboard may hand over. */
import fc from 'fast-check';

/** Written by hand: what has broken readers of numbers and of texts elsewhere. */
export const NASTY: readonly string[] = [
  '', ' ', '\t', '\n', '\u00a0', '\u200b', '\ufeff', '\0', 'none', 'None', ' none ', 'null', 'undefined', 'NaN', 'nan', 'Infinity', '-Infinity', 'true', 'false',
  '0', '-0', '+0', '00', '007', '0x10', '0b11', '0o17', '1e2', '1E-3', '4.4e1', '9'.repeat(400), `0.${'0'.repeat(400)}1`, '1_000', '1,5', '1.234,5', '43,25', '43.', '.5',
  '.', '+', '-', '--1', '+-1', '1-', '1.2.3', '43 D', '43D', '7.8mm', '90°', '½', '٤٣', '４３', '४३', '−5', '–5', '43\0', '43\n', '\u202e43', '43;', '43 44', '[43]', '{}', '"43"',
  'right', 'left', 'RIGHT', ' right', 'right ', 'OD', 'OS', 'D', 'mm', 'MM', 'd', 'omitted', 'typical', '0.30@180', '0.3@0', '0.3@181', '0.30 @ 90 °', '@', '@90', '1@', '1@2@3', '3.0001@90',
  '-0.3@90', '0.3×180', 'blade', 'laser', 'Laser', 'ectasia', 'collagen dry-eye', 'ectasia\tectasia', 'ectasia,collagen', '__proto__', 'constructor', 'toString', 'hasOwnProperty',
  '<script>alert(1)</script>', '<img src=x onerror=alert(1)>', '{$value}', '{$field} {$min}', '%s', '${1}', '\\', "'", '"', '`', '\ud800', '\udfff', '😀', 'é', 'e\u0301', 'x'.repeat(100_000),
];

const WORDS = ['right', 'left', 'D', 'mm', 'omitted', 'typical', 'blade', 'laser', 'none', 'collagen', 'dry-eye', 'radial-cuts', 'ectasia', 'collagen ectasia'];

/** Numbers of the sizes that occur in an eye, rounded as they are typed. */
const typed = fc.tuple(fc.constantFrom(1, 4, 12, 60, 180, 400, 1000), fc.integer({ min: -50, max: 1000 }), fc.integer({ min: 0, max: 3 })).map(([size, share, digits]) => ((size * share) / 1000).toFixed(digits));

/** Any text at all, and those that come close to what is taken. */
export const attributeText: fc.Arbitrary<string> = fc.oneof(
  { weight: 8, arbitrary: typed },
  { weight: 1, arbitrary: fc.tuple(fc.constantFrom('', ' ', '+', '-', '\n', '.'), typed, fc.constantFrom('', ' ', '.', 'D', '°', ' mm', 'e1', ',5', '\0')).map((parts) => parts.join('')) },
  { weight: 1, arbitrary: fc.tuple(fc.integer({ min: 0, max: 350 }), fc.constantFrom('@', ' @ ', 'x', '@@'), fc.integer({ min: -10, max: 200 })).map(([power, sign, along]) => `${power / 100}${sign}${along}`) },
  { weight: 1, arbitrary: fc.constantFrom(...WORDS) },
  { weight: 1, arbitrary: fc.constantFrom(...NASTY.filter((text) => text.length < 1000)) },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 40 }) },
  { weight: 1, arbitrary: fc.string({ unit: fc.constantFrom(...'0123456789.+-e@° \t') , maxLength: 8 }) },
  { weight: 1, arbitrary: fc.double().map(String) },
);
