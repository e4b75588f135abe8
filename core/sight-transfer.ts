import { RADIANS, meridian } from './angle.js';
import { finite, oneOf } from './check.js';
import { discTransform, quickDiscTransform } from './sight-bessel.js';
import { allowed, focusError } from './sight-limits.js';
import { SIGHT_MODEL } from './sight-model.js';
import { waveTransfer } from './sight-wave.js';
import type { PowerVector, Refraction } from './types.js';

/** By rays alone, or with diffraction at the pupil. */
export const TRANSFER_MODELS = ['geometric', 'wave'] as const;
export type TransferModel = (typeof TRANSFER_MODELS)[number];

export interface TransferOptions {
  /**
   * Error in focus at the plane of the pupil, dioptres. As what is left to correct or as what is too much: a change of
   * all signs changes nothing, for a round pupil with an even error transfers both alike.
   */
  refraction: Refraction;
  /** Diameter of the pupil, 1–9 mm. */
  pupilMm: number;
  /** 380–780 nm, 555 when left out; only the model `wave` asks for it. */
  wavelengthNm?: number;
  /** `geometric` when left out: right where the blur is many times the Airy disc, and too sharp near focus. */
  model?: TransferModel;
}

/** Share of the contrast that is left, < 0 where dark and bright change places, of a grating of (fx, fy) cycles a degree. */
export type Transfer = (fx: number, fy: number) => number;

/**
 * Optical transfer function, 1 at (0, 0) and real. Frequencies lie in the frame of the dial: fx towards the 0° and fy
 * towards the 90° of one who faces the patient. What the patient sees is mirrored left to right.
 *
 * Geometric: 2·J1(x)/x with x = π·p·|E·f|, f in cycles a radian and E = [[M + J0, J45], [J45, M − J0]] the matrix of
 * the error (Fourier transform of the evenly lit blur, the ellipse into which E turns a round pupil). Wave: the
 * autocorrelation of the pupil, one colour. Absolute error of both below 1e-9.
 * @throws RangeError for options out of range; the function, for a frequency that is not finite.
 */
export function transfer(options: TransferOptions): Transfer {
  const made = transferOf(options, discTransform);
  return (fx, fy) => made(finite('fx', fx, 'cycles/°'), finite('fy', fy, 'cycles/°'));
}

/** The same for whole pictures: no checks of the frequencies, the disc from a table (error below 5e-9). */
export function quickTransfer(options: TransferOptions): Transfer {
  return transferOf(options, quickDiscTransform());
}

function transferOf(options: TransferOptions, disc: (x: number) => number): Transfer {
  const error = focusError(options.refraction);
  const metres = allowed('pupil', 'pupil', options.pupilMm) / 1000;
  const nm = allowed('wavelength', 'wavelength', options.wavelengthNm ?? SIGHT_MODEL.wavelength);
  const wave = oneOf('model', options.model ?? 'geometric', TRANSFER_MODELS) === 'wave';
  return wave ? waveOf(error, metres, nm * 1e-9) : geometricOf(error, metres, disc);
}

function geometricOf({ m, j0, j45 }: PowerVector, pupil: number, disc: (x: number) => number): Transfer {
  // From cycles a degree to π·p·cycles a radian.
  const scale = (Math.PI * pupil) / RADIANS;
  const [xx, xy, yy] = [(m + j0) * scale, j45 * scale, (m - j0) * scale];
  return (fx, fy) => {
    const x = xx * fx + xy * fy;
    const y = xy * fx + yy * fy;
    return disc(Math.sqrt(x * x + y * y));
  };
}

function waveOf({ m, j0, j45 }: PowerVector, pupil: number, wavelength: number): Transfer {
  const scale = (Math.PI * pupil) / RADIANS;
  const apart = wavelength / (pupil * RADIANS);
  return (fx, fy) => {
    const f = Math.hypot(fx, fy);
    if (f === 0) return 1;
    const x = (m + j0) * fx + j45 * fy;
    const y = j45 * fx + (m - j0) * fy;
    return waveTransfer(f * apart, (scale * (x * fx + y * fy)) / f, (scale * (y * fx - x * fy)) / f);
  };
}

/**
 * Cycles a degree at and above which nothing is left: p/λ cycles a radian.
 * @throws RangeError when a value is out of range.
 */
export function cutOffFrequency(pupilMm: number, wavelengthNm: number = SIGHT_MODEL.wavelength): number {
  const metres = allowed('pupil', 'pupil', pupilMm) / 1000;
  return (metres / (allowed('wavelength', 'wavelength', wavelengthNm) * 1e-9)) * RADIANS;
}

/** What becomes of a point by rays alone: an evenly lit ellipse. Axes in degrees of visual angle, full lengths. */
export interface BlurEllipse {
  longer: number;
  shorter: number;
  /** Direction of the longer axis on the dial, degrees in (0, 180]; 180 for a disc. */
  direction: number;
}

/**
 * Blur angle in radians = pupil in metres × error in dioptres, along each principal meridian (Smith 1982). A pure cylinder
 * makes a line across its axis, and only lines in its own direction stay sharp.
 * @throws RangeError when a value is out of range.
 */
export function blurEllipse({ refraction, pupilMm }: Pick<TransferOptions, 'refraction' | 'pupilMm'>): BlurEllipse {
  const { m, j0, j45 } = focusError(refraction);
  const degrees = allowed('pupil', 'pupil', pupilMm) / 1000 / RADIANS;
  const j = Math.hypot(j0, j45);
  const strongest = Math.atan2(j45, j0) / (2 * RADIANS);
  return {
    longer: degrees * (Math.abs(m) + j),
    shorter: degrees * Math.abs(Math.abs(m) - j),
    direction: j < 1e-12 || Math.abs(m) < 1e-12 * j ? 180 : meridian(m > 0 ? strongest : strongest + 90),
  };
}

/**
 * Half the width and half the height, in degrees, of what contains the blur of a point, and with the model `wave`
 * also three dark rings of its diffraction.
 */
export function blurExtent(options: TransferOptions): { across: number; up: number } {
  const { m, j0, j45 } = focusError(options.refraction);
  const half = options.pupilMm / 2000 / RADIANS;
  const rings = options.model === 'wave' ? THIRD_RING / cutOffFrequency(options.pupilMm, options.wavelengthNm) : 0;
  return { across: half * Math.hypot(m + j0, j45) + rings, up: half * Math.hypot(j45, m - j0) + rings };
}

/** Third zero of J1, over π: radius of the third dark ring in wavelengths over pupil diameters. */
const THIRD_RING = 3.2383;
