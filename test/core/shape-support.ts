/** Random corneas, and derivatives of any profile by differences. */
import fc from 'fast-check';
import type { CornealPoint, CornealShape, SurfacePoint } from '../../core/shape.js';
import { between } from './plans.js';

/** A surface of revolution. */
export const round = (radius: number, conic = 0): CornealShape => ({ flatRadius: radius, steepRadius: radius, steepMeridian: 90, flatConic: conic, steepConic: conic });

export const cut = fc.record({ site: between(0, 360), length: between(1, 120), distance: between(2, 6), amount: between(-5, 5), basis: fc.constant('assumed' as const) });

export const conicoid: fc.Arbitrary<CornealShape> = fc
  .record({ flat: between(6.5, 9), share: between(0.85, 1), steepMeridian: between(0, 180), flatConic: between(-1.5, 0.3), steepConic: between(-1.5, 0.3) })
  .map(({ flat, share, ...shape }) => ({ ...shape, flatRadius: flat, steepRadius: flat * share }));

export const shape: fc.Arbitrary<CornealShape> = fc.tuple(conicoid, fc.array(cut, { maxLength: 3 })).map(([base, local]) => ({ ...base, local }));

/** Sagitta along a direction, on both sides of the apex. */
export function profile(at: (point: CornealPoint) => SurfacePoint, direction: number): (rho: number) => number {
  return (rho) => at({ distance: Math.abs(rho), direction: rho < 0 ? direction + 180 : direction }).sagitta;
}

/** First derivative, by differences of the fourth order. */
export function firstDerivative(f: (x: number) => number, x: number, h = 1e-2): number {
  return (f(x - 2 * h) - 8 * f(x - h) + 8 * f(x + h) - f(x + 2 * h)) / (12 * h);
}

/** Second derivative, by differences of the fourth order. */
export function secondDerivative(f: (x: number) => number, x: number, h = 1e-2): number {
  return (-f(x - 2 * h) + 16 * f(x - h) - 30 * f(x) + 16 * f(x + h) - f(x + 2 * h)) / (12 * h * h);
}
