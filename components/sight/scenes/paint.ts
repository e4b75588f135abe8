import { SIDE } from '../sight.scenes.js';
import type { Drawing, Paint, TextLine } from './shapes.js';

const ORIGIN = [0, 0, 1] as const;

/** Draws a scene onto a canvas. */
export function paint(context: CanvasRenderingContext2D, { shapes, lines = [] }: Drawing, family: string, rightToLeft: boolean): void {
  context.lineCap = 'round';
  context.lineJoin = 'round';
  for (const { path, paint, width, at: [x, y, unit] = ORIGIN } of shapes) {
    context.setTransform(unit, 0, 0, unit, x, y);
    const outline = new Path2D(path);
    if (width === undefined) {
      context.fillStyle = styleOf(context, paint);
      context.fill(outline);
    } else {
      context.strokeStyle = styleOf(context, paint);
      context.lineWidth = width;
      context.stroke(outline);
    }
  }
  context.resetTransform();
  for (const line of lines) write(context, line, family, rightToLeft);
}

function styleOf(context: CanvasRenderingContext2D, paint: Paint): string | CanvasGradient {
  if (typeof paint === 'string') return paint;
  const [x, y, a, b] = paint.at as [number, number, number, number];
  const gradient = paint.kind === 'linear' ? context.createLinearGradient(x, y, a, b) : context.createRadialGradient(x, y, 0, x, y, a);
  for (const [offset, colour] of paint.stops) gradient.addColorStop(offset, colour);
  return gradient;
}

/** Size at which the height of the x is measured, px. */
const MEASURED = 100;

/** Size of the type in which a small x is `xHeight` high, px. */
export function typeSize(context: CanvasRenderingContext2D, xHeight: number, family: string): number {
  context.font = `${MEASURED}px ${family}`;
  return (MEASURED * xHeight) / context.measureText('x').actualBoundingBoxAscent;
}

function write(context: CanvasRenderingContext2D, { text, x, y, xHeight }: TextLine, family: string, rightToLeft: boolean): void {
  context.font = `${typeSize(context, xHeight, family)}px ${family}`;
  context.direction = rightToLeft ? 'rtl' : 'ltr';
  context.textAlign = 'start';
  context.fillStyle = '#111';
  context.fillText(text, rightToLeft ? SIDE - x : x, y);
}
