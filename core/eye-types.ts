/**
 * What an eye is made of, for tracing light through it.
 *
 * **Frame.** x to the right of one who faces the patient (0° of the dial), y up (90°), z along the light into the eye,
 * 0 at the vertex of the first surface. The same for right and left eyes: nasal lies at 0° of a right eye. With z away
 * from the viewer the three are a *left-handed* frame; nothing here depends on it, a cross product would.
 * Distances in mm, powers and vergences in dioptres, meridians in degrees of the dial.
 */
import type { Refraction } from './types.js';

/** What light meets behind a surface. */
export interface Medium {
  /** Refractive index behind the surface, 1–2.5; right behind it, where the index is graded. */
  indexAfter: number;
  /** Distance to the next surface, 0–1000 mm. Behind the last surface it counts for nothing and may be left out. */
  gapAfter?: number;
  /** Index that changes within the gap. */
  gradient?: Gradient;
}

/** n = indexAfter + axial·z + axialSquare·z² + radial·r², z from the surface and r from the axis in mm. */
export interface Gradient {
  axial: number;
  axialSquare: number;
  radial: number;
}

/** A spherical surface. */
export interface Surface extends Medium {
  /** mm, positive when its centre lies behind it, as that of the cornea does; `Infinity` for a flat surface. */
  radius: number;
}

/** A toric surface, set at any angle. */
export interface ToricSurface extends Medium {
  /** Radius along the flatter meridian, mm; the larger in size. */
  flatRadius: number;
  /** Radius along the steeper meridian, mm; of the same sign. */
  steepRadius: number;
  /** Degrees of the dial, 0–180. */
  steepMeridian: number;
}

/** A lens, or a whole cornea, whose thickness is left out of account. */
export interface ThinLens {
  /** Power in the eye, D, as sphere, cylinder and axis. */
  lens: Refraction;
  /** Distance to the next surface, 0–1000 mm. */
  gapAfter?: number;
  /** Index behind it; that in front when left out. */
  indexAfter?: number;
}

export interface EyeSystem<Part = Surface | ThinLens> {
  /** In the order in which light meets them; the first is where distances begin. */
  surfaces: readonly Part[];
  /** Index in front, 1 when left out. */
  indexBefore?: number;
}

export type ToricSystem = EyeSystem<Surface | ToricSurface | ThinLens>;

/** Gaussian properties. Places in mm from the first vertex, positive along the light. */
export interface Cardinals {
  /** Equivalent power, D. */
  power: number;
  /** From here light leaves parallel. */
  frontFocus: number;
  /** Here parallel light comes together. */
  backFocus: number;
  frontPrincipal: number;
  backPrincipal: number;
  frontNodal: number;
  backNodal: number;
}

/** One figure in the two principal meridians, which are at right angles. */
export interface Principal {
  /** In the meridian of the weaker power. */
  flat: number;
  /** In the meridian of the stronger power. */
  steep: number;
  /** Meridian of the stronger power, degrees in (0, 180]; 180 when both are alike. */
  steepMeridian: number;
}

/**
 * Gaussian properties of an astigmatic system. Power, front focus and back focus each have meridians of their own
 * when surfaces are crossed obliquely with a distance between them; otherwise all agree.
 */
export type ToricCardinals = Record<keyof Cardinals, Principal> & {
  /**
   * Half the difference of the mixed terms of the power matrix, D: 0 unless surfaces at a distance are crossed
   * obliquely. The foci are exact whatever it is; power, principal and nodal points are those of the symmetric part.
   */
  asymmetry: number;
};
