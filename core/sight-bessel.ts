/** Bessel's function J1, and the transform of an evenly lit disc that is made of it. */

/** Below, the power series; above, Hankel's expansion. Either is then good to 2e-11, by the size of what is left out. */
const SERIES_END = 14;

/** J1(x) for any real x; absolute error below 1e-10 (Abramowitz & Stegun 9.1.10 and 9.2.5, 9.2.9, 9.2.10). */
export function besselJ1(x: number): number {
  const size = Math.abs(x);
  const value = size < SERIES_END ? (size / 2) * series(size) : hankel(size);
  return x < 0 ? -value : value;
}

/** 2·J1(x)/x, which is 1 at 0: what an evenly lit disc of diameter d leaves of f cycles, with x = π·d·f. */
export function discTransform(x: number): number {
  const size = Math.abs(x);
  return size < SERIES_END ? series(size) : (2 * hankel(size)) / size;
}

/** 2·J1(x)/x = Σ (−x²/4)^k / (k!·(k + 1)!) */
function series(x: number): number {
  const step = (-x * x) / 4;
  let term = 1;
  let total = 1;
  for (let k = 1; Math.abs(term) > 1e-17; k += 1) {
    term *= step / (k * (k + 1));
    total += term;
  }
  return total;
}

/** Terms fall until about 2x; a fixed number is enough for x ≥ 14. */
const TERMS = 24;

/** J1(x) = √(2/πx)·(P·cos χ − Q·sin χ), χ = x − 3π/4 */
function hankel(x: number): number {
  let term = 1;
  let p = 1;
  let q = 0;
  for (let k = 1; k <= TERMS && Math.abs(term) > 1e-17; k += 1) {
    term *= (4 - (2 * k - 1) ** 2) / (8 * k * x);
    const sign = k % 4 < 2 ? 1 : -1;
    if (k % 2) q += sign * term;
    else p += sign * term;
  }
  const angle = x - 0.75 * Math.PI;
  return Math.sqrt(2 / (Math.PI * x)) * (p * Math.cos(angle) - q * Math.sin(angle));
}

/** Points of the table a unit of x, and its end: 64 kB, which stays near the processor. */
const DENSITY = 32;
const TABLE_END = 256;

let table: Float64Array | undefined;

/** One point more at either end, for the cubic through four neighbours (Lagrange). The function is even. */
function makeTable(): Float64Array {
  return Float64Array.from({ length: DENSITY * TABLE_END + 4 }, (_, i) => discTransform((i - 1) / DENSITY));
}

/**
 * `discTransform` of x ≥ 0 from a table, for the many points of a picture; absolute error below 5e-9. Beyond the table
 * the direct sum is used.
 */
export function quickDiscTransform(): (x: number) => number {
  const points = (table ??= makeTable());
  return (x) => {
    if (x >= TABLE_END) return discTransform(x);
    const at = x * DENSITY;
    const i = at | 0;
    const t = at - i;
    const [a, b, c, d] = [points[i]!, points[i + 1]!, points[i + 2]!, points[i + 3]!];
    const slope = c - a / 3 - b / 2 - d / 6;
    const bend = (a + c) / 2 - b;
    const twist = (d - a) / 6 + (b - c) / 2;
    return b + t * (slope + t * (bend + t * twist));
  };
}
