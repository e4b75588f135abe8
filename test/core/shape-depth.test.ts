/** Depth of the cornea near cuts, against the differential equation of its profile. */
import { expect, test } from 'vitest';
import { cornealSurface } from '../../core/shape.js';
import { round } from './shape-support.js';

test('cuts at two distances make the depth of slope and curvature integrated together, from the apex outwards', () => {
  // z″/(1 + z′²)^1.5 is the curvature: that of a conic, R²/(R² − Q·ρ²)^1.5, less (1 − t²)³ of what each cut lacks.
  const [radius, q, reach, step] = [7.8, -0.26, 1.5, 0.005];
  const local = [{ site: 100, length: 80, distance: 3, amount: 2 }, { site: 100, length: 40, distance: 5.5, amount: -1.5 }];
  const at = cornealSurface({ ...round(radius, q), local: local.map((one) => ({ ...one, basis: 'assumed' as const })) });
  // Along the middle of both; and half way down the taper of the shorter one, where half of it is left.
  for (const [along, shares] of [[100, [1, 1]], [132.5, [1, 0.5]], [280, [0, 0]]] as const) {
    const curvature = (rho: number): number => local.reduce((sum, { distance, amount }, index) =>
      sum - (shares[index]! * amount * Math.max(0, 1 - ((rho - distance) / reach) ** 2) ** 3) / 337.5, radius ** 2 / (radius ** 2 - q * rho ** 2) ** 1.5);
    let [z, slope] = [0, 0];
    const bent = (rho: number, u: number): number => curvature(rho) * Math.hypot(1, u) ** 3;
    for (let i = 0; i < 1260; i += 1) {
      const rho = i * step;
      const s1 = bent(rho, slope);
      const s2 = bent(rho + step / 2, slope + (step / 2) * s1);
      const s3 = bent(rho + step / 2, slope + (step / 2) * s2);
      const s4 = bent(rho + step, slope + step * s3);
      z += step * (slope + (step / 6) * (s1 + s2 + s3));
      slope += (step / 6) * (s1 + 2 * s2 + 2 * s3 + s4);
      // Every 0.45 mm: before, in and behind the first cut, in the second one and beyond its middle.
      if ((i + 1) % 90) continue;
      const told = at({ distance: rho + step, direction: along });
      expect(Math.abs(told.sagitta - z), `depth at ${rho + step} mm`).toBeLessThan(1e-10);
      expect(Math.abs(told.slope - slope), `slope at ${rho + step} mm`).toBeLessThan(1e-10);
    }
  }
});
