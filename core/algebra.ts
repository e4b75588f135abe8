/**
 * Matrices, by mathjs. The only file that imports it, so that a page which shows no matrix never loads it (about 65 kB
 * compressed), and so that the build has one file to bundle. A product takes some 10 µs: never while something is dragged.
 */
import { eigs, inv, multiply } from 'mathjs';

/** A matrix by its rows. */
export type Rows = readonly (readonly number[])[];

/** One principal direction of a symmetric matrix. */
export interface EigenPair {
  value: number;
  /** Unit vector; its sign means nothing. */
  direction: number[];
}

/** Product of matrices as written: the last one acts first. */
export function product(first: Rows, ...others: Rows[]): number[][] {
  return others.reduce<Rows>((left, right) => multiply(left as number[][], right as number[][]) as number[][], first) as number[][];
}

/** @throws RangeError for a matrix that cannot be inverted. */
export function inverse(matrix: Rows): number[][] {
  try {
    const inverted = inv(matrix as number[][]);
    if (inverted.flat().every(Number.isFinite)) return inverted;
  } catch {
    // mathjs names no value; the message below does.
  }
  throw new RangeError(`matrix: ${JSON.stringify(matrix)} is refused; allowed is a square matrix whose determinant is not 0.`);
}

/**
 * Eigenvalues, the smallest first, and their directions, which are at right angles; along the axes where all values are
 * alike. Only the symmetric part of `matrix` counts.
 */
export function eigenPairs(matrix: Rows): EigenPair[] {
  // The precision of mathjs is absolute, and small differences of large values are what matters here: only what
  // differs from the mean is handed over, brought to the size of 1.
  const mean = matrix.reduce((sum, row, i) => sum + row[i]!, 0) / matrix.length;
  const apart = matrix.map((row, i) => row.map((value, j) => (i === j ? value - mean : (value + matrix[j]![i]!) / 2)));
  const size = Math.max(...apart.flat().map(Math.abs)) || 1;
  const { eigenvectors } = eigs(apart.map((row) => row.map((value) => value / size)));
  return (eigenvectors as { value: number; vector: number[] }[])
    .map(({ value, vector }) => ({ value: mean + size * value, direction: [...vector] }))
    .sort((a, b) => a.value - b.value);
}
