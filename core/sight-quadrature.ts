/** Gauss's rule on 0 to 1: exact for polynomials up to degree 2n − 1, and soon exact for any smooth function. */
export interface Rule {
  at: Float64Array;
  weight: Float64Array;
}

const rules = new Map<number, Rule>();

/** The rule of `n` points, worked out once. */
export function gaussRule(n: number): Rule {
  let rule = rules.get(n);
  if (!rule) rules.set(n, (rule = makeRule(n)));
  return rule;
}

function makeRule(n: number): Rule {
  const rule = { at: new Float64Array(n), weight: new Float64Array(n) };
  for (let i = 0; i < n; i += 1) {
    // Close enough to the i-th root of the Legendre polynomial for Newton's steps to find it and no other.
    let x = Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    let slope = 1;
    for (let step = 0; step < 8; step += 1) {
      const [value, before] = legendre(n, x);
      slope = (n * (x * value - before)) / (x * x - 1);
      x -= value / slope;
    }
    rule.at[i] = (1 + x) / 2;
    rule.weight[i] = 1 / ((1 - x * x) * slope * slope);
  }
  return rule;
}

/** Legendre polynomials of the orders n and n − 1 at x. */
function legendre(n: number, x: number): [value: number, before: number] {
  let [before, value] = [1, x];
  for (let k = 2; k <= n; k += 1) [before, value] = [value, ((2 * k - 1) * x * value - (k - 1) * before) / k];
  return [value, before];
}
