import { NULL, imageOfCircle, mixed, times } from '../../core/eye-matrix.js';
import type { Matrix } from '../../core/eye-matrix.js';
import type { Point } from '../internal/geometry.js';
import type { Settings } from './pencil.settings.js';

const RADIANS = Math.PI / 180;

/** How the eye is seen: from in front as on the dial at a turn of 0°, with the light going to the right at 90°. No perspective. */
export interface Camera {
  /** From mm across the eye, x to the right and y up, to px of the drawing, y down. */
  across: Matrix;
  /** px for one mm along the light. */
  along: Point;
  /** Whether what lies further back in the eye is nearer to the viewer. */
  backNearer: boolean;
  /** The place in the middle of the drawing, mm from the cornea. */
  middle: number;
}

/** Sizes of what is drawn, px. */
export interface Extent {
  /** Half the depth, and half the width at its ends. */
  depth: number;
  width: number;
  /** Room: half of the drawing. */
  half: number;
  halfHeight: number;
}

/** @param mm half depth and half width of what is drawn, mm. */
export function cameraOf({ turn, tilt }: Pick<Settings, 'turn' | 'tilt'>, middle: number, { depth, width, half, halfHeight }: Extent, mm: { depth: number; width: number }): Camera {
  const [ca, sa] = [Math.cos(turn * RADIANS), Math.sin(turn * RADIANS)];
  const [ce, se] = [Math.cos(tilt * RADIANS), Math.sin(tilt * RADIANS)];
  const [right, high] = [depth * Math.abs(sa) + width * Math.abs(ca), depth * Math.abs(ca * se) + width * Math.hypot(sa * se, ce)];
  const fit = Math.min(1, half / right, halfHeight / high);
  const [across, along] = [(fit * width) / mm.width, (fit * depth) / mm.depth];
  return {
    // Seen from the side of 0°, light goes to the right: the depth of x there is −x.
    across: mixed(across, [ca, 0, sa * se, -ce], 0, NULL),
    along: { x: along * sa, y: -along * ca * se },
    backNearer: ca * ce < 0,
    middle,
  };
}

/** Where a point of the eye is drawn; mm from the axis, and from the cornea. */
export function project({ across: [a, b, c, d], along, middle }: Camera, { x, y }: Point, z: number): Point {
  return { x: a * x + b * y + along.x * (z - middle), y: c * x + d * y + along.y * (z - middle) };
}

/** A section, given as the image of a circle of radius 1, as an ellipse of the drawing. */
export function drawnEllipse(camera: Camera, section: Matrix, z: number): { centre: Point; rx: number; ry: number; angle: number } {
  const { longer, shorter, direction } = imageOfCircle(times(camera.across, section));
  return { centre: project(camera, { x: 0, y: 0 }, z), rx: longer, ry: shorter, angle: direction };
}
