/**
 * Between the numbers of a picture and light. Light adds up; the numbers of a picture do not (sRGB, IEC 61966-2-1, its
 * constants from memory).
 */

/** Light, 0–1, of an sRGB value 0–1. */
export function toLight(value: number): number {
  return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
}

/** sRGB value of light, both 0–1. */
export function fromLight(light: number): number {
  return light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055;
}

/** Steps of the table from light to bytes: the steepest part then has 20 a byte, so that a byte is at most 0.03 off. */
const STEPS = 65535;

let lights: Float64Array | undefined;
let bytes: Uint8ClampedArray | undefined;

/** Light of each byte. */
export function lightOfBytes(): Float64Array {
  return (lights ??= Float64Array.from({ length: 256 }, (_, byte) => toLight(byte / 255)));
}

/** Byte of light, for any number: what is darker than black or brighter than white becomes that. */
export function byteOfLight(): (light: number) => number {
  const table = (bytes ??= Uint8ClampedArray.from({ length: STEPS + 1 }, (_, step) => 255 * fromLight(step / STEPS)));
  return (light) => (light <= 0 ? 0 : light >= 1 ? 255 : table[(light * STEPS + 0.5) | 0]!);
}
