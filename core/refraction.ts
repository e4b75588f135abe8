import { RADIANS, meridian } from './angle.js';
import { RefusedValue, finite, within } from './check.js';
import type { PowerVector, Refraction } from './types.js';

/** Sign of the cylinder in which a sphero-cylinder is written. */
export type CylinderSign = 'minus' | 'plus';

/**
 * M = S + C/2, J0 = -(C/2)·cos 2A, J45 = -(C/2)·sin 2A (Thibos, Wheeler & Horner 1997), in dioptres.
 * @throws RangeError when a part is not finite.
 */
export function toPowerVector(r: Refraction): PowerVector {
  const sphere = finite('sphere', r.sphere, 'D');
  const half = finite('cylinder', r.cylinder, 'D') / 2;
  const doubled = 2 * RADIANS * finite('axis', r.axis, '°');
  return { m: sphere + half, j0: -half * Math.cos(doubled), j45: -half * Math.sin(doubled) };
}

/** Sphero-cylinder of a power vector, in minus-cylinder form unless `sign` says plus. A pure sphere has axis 180. */
export function fromPowerVector(p: PowerVector, sign: CylinderSign = 'minus'): Refraction {
  const half = Math.hypot(finite('j0', p.j0, 'D'), finite('j45', p.j45, 'D'));
  const m = finite('m', p.m, 'D');
  const axis = half < 1e-12 ? 180 : meridian(Math.atan2(p.j45, p.j0) / (2 * RADIANS));
  return sign === 'minus'
    ? { sphere: m + half, cylinder: -2 * half + 0, axis }
    : { sphere: m - half, cylinder: 2 * half, axis: half < 1e-12 ? 180 : meridian(axis + 90) };
}

/** The same lens written with the other sign of cylinder. */
export function transpose(r: Refraction): Refraction {
  return {
    sphere: finite('sphere', r.sphere, 'D') + finite('cylinder', r.cylinder, 'D'),
    cylinder: -r.cylinder + 0,
    axis: meridian(finite('axis', r.axis, '°') + 90),
  };
}

/** Thin lenses in contact, cylinders crossed at any angle, as one lens in minus-cylinder form. */
export function combine(...lenses: Refraction[]): Refraction {
  const total = { m: 0, j0: 0, j45: 0 };
  for (const lens of lenses) {
    const p = toPowerVector(lens);
    total.m += p.m;
    total.j0 += p.j0;
    total.j45 += p.j45;
  }
  return fromPowerVector(total);
}

/**
 * Spectacle refraction at the corneal plane, each principal meridian by F / (1 - d·F).
 * @param vertexMm distance from the lens to the cornea, 0–30 mm.
 * @throws RangeError when a meridian would focus on or in front of the cornea, where no corneal value exists.
 */
export function atVertex(r: Refraction, vertexMm: number): Refraction {
  const metres = within('vertex distance', vertexMm, 0, 30, 'mm') / 1000;
  const moved = (power: number): number => {
    const nearness = 1 - metres * finite('power', power, 'D');
    if (nearness <= 0) throw new RefusedValue('power', power, `below ${1 / metres} D at ${vertexMm} mm`);
    return power / nearness;
  };
  const sphere = moved(r.sphere);
  return { sphere, cylinder: moved(r.sphere + finite('cylinder', r.cylinder, 'D')) - sphere, axis: meridian(r.axis) };
}
