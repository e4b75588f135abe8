/** A series of results that is invented: written by a seeded generator, after no surgeon and no clinic. */

/** Numbers between 0 and 1 that are the same for the same seed (a 32-bit generator by multiplication and shifts). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** What the generator takes for the truth; a reader of the results should find it again. */
export const INVENTED_TRUTH = { flattening: 0.35, torque: 0.05, sd: 0.3 } as const;

const HEADINGS = 'label;eye;astigmatism before;steep meridian before;astigmatism after;steep meridian after;incision site;incision width';

/** A table of `eyes` invented eyes with temporal entries of 2.4 mm, semicolons and decimal commas. */
export function inventedResults(eyes: number, seed = 7): string {
  const random = seeded(seed);
  const normal = (): number => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const written = (value: number): string => value.toFixed(2).replace('.', ',');
  const polar = (x: number, y: number): string => `${written(Math.hypot(x, y))};${(((Math.atan2(y, x) * 90) / Math.PI + 180) % 180).toFixed(0)}`;
  const rows = Array.from({ length: eyes }, (_, index) => {
    const right = random() < 0.5;
    const site = right ? 180 : 0;
    const [x, y] = [0.2 + 0.7 * normal(), 0.6 * normal()];
    // Both sites lie on the meridian of 180°, which is flattened: towards minus x in the doubled plane.
    const [dx, dy] = [-INVENTED_TRUTH.flattening + INVENTED_TRUTH.sd * normal(), INVENTED_TRUTH.torque + INVENTED_TRUTH.sd * normal()];
    return `invented ${index + 1};${right ? 'right' : 'left'};${polar(x, y)};${polar(x + dx, y + dy)};${site};2,4`;
  });
  return [HEADINGS, ...rows].join('\n');
}

/** Rows as they turn up in real tables: each has something wrong with it. */
export const INVENTED_SLIPS = [
  'slip 1;right;1,00;200;0,50;90;180;2,4',
  'slip 2;left;1,00;90;;;0;2,4',
  'slip 3;both;1,00;90;0,50;90;180;2,4',
  'slip 4;right;75;90;0,50;90;180;2,4',
].join('\n');
