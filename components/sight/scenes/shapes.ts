import { SIDE } from '../sight.scenes.js';

/** What a scene is drawn from: as data, so that one drawing becomes SVG and pixels alike, without an image file. */

/** Colours along a line (x1, y1, x2, y2), or outwards from a point (x, y, radius). */
export interface Gradient {
  readonly kind: 'linear' | 'radial';
  readonly at: readonly number[];
  readonly stops: readonly (readonly [offset: number, colour: string])[];
}

export type Paint = string | Gradient;

/** A filled path, or with `width` a stroke with round ends. */
export interface Shape {
  readonly path: string;
  readonly paint: Paint;
  readonly width?: number;
  /** Where the path's own (0, 0) lies, and how large its unit is. */
  readonly at?: readonly [x: number, y: number, unit: number];
}

/** A line of text; the height of its x, from which the size of the type follows, is what is given. */
export interface TextLine {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly xHeight: number;
}

export interface Drawing {
  readonly shapes: readonly Shape[];
  readonly lines?: readonly TextLine[];
}

/** A number as a path has it: two decimals are a fiftieth of a pixel. */
export const n = (value: number): string => String(Math.round(value * 100) / 100);

export const circle = (x: number, y: number, r: number): string => `M${n(x - r)} ${n(y)}a${n(r)} ${n(r)} 0 1 0 ${n(2 * r)} 0a${n(r)} ${n(r)} 0 1 0 ${n(-2 * r)} 0z`;

export const oval = (x: number, y: number, rx: number, ry: number): string => `M${n(x - rx)} ${n(y)}a${n(rx)} ${n(ry)} 0 1 0 ${n(2 * rx)} 0a${n(rx)} ${n(ry)} 0 1 0 ${n(-2 * rx)} 0z`;

export const box = (x: number, y: number, width: number, height: number): string => `M${n(x)} ${n(y)}h${n(width)}v${n(height)}h${n(-width)}z`;

/** A closed polygon of x, y, x, y, … */
export function polygon(...points: number[]): string {
  let path = '';
  for (let i = 0; i < points.length; i += 2) path += `${i ? 'L' : 'M'}${n(points[i]!)} ${n(points[i + 1]!)}`;
  return `${path}z`;
}

export const linear = (at: readonly number[], ...colours: string[]): Gradient => ({ kind: 'linear', at, stops: evenly(colours) });

export const radial = (x: number, y: number, r: number, ...colours: string[]): Gradient => ({ kind: 'radial', at: [x, y, r], stops: evenly(colours) });

function evenly(colours: readonly string[]): Gradient['stops'] {
  return colours.map((colour, i) => [i / (colours.length - 1), colour]);
}

export const WHOLE = box(0, 0, SIDE, SIDE);
