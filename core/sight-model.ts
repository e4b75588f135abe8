/** The constants of what an eye may see, by the rules of `model.ts`. In a file of their own: no page that only plans loads them. */
export const SIGHT_MODEL = {
  wavelength: 555,
  /** logMAR = square · cylinder² + linear · cylinder + sharp */
  acuitySquare: 0.017,
  acuityLinear: 0.125,
  acuitySharp: -0.116,
  acuityMost: 3,
  acuitySd: 0.14,
  landoltRing: 5,
} as const;
