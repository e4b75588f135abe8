import type { Point } from './geometry.js';

/** How far apart the dots are that are measured, user units: wide enough for what browsers round. */
const SPAN = 100;

type Dots = [origin: SVGCircleElement, right: SVGCircleElement, down: SVGCircleElement];

/**
 * From the user units of a drawing to client positions, whatever the page around it does. Measured on three dots, for
 * `getScreenCTM` forgets how the page scales and turns the drawing in WebKit (its bugs 209220 and 308970), and how it
 * zooms it in Firefox.
 */
export function screenMatrix(drawing: SVGSVGElement): DOMMatrix {
  const dots = dotsIn(drawing);
  const matrix = between(drawing, dots);
  dots.forEach((dot) => dot.remove());
  return matrix;
}

/**
 * The same for as long as something is dragged. The dots stay, for each that comes or goes costs a layout; and what is
 * measured holds until the next frame, since the pointer is where the user sees it: on what was painted last.
 */
export class ScreenRuler {
  #dots: Dots | null = null;
  #matrix: DOMMatrix | null = null;

  matrix(drawing: SVGSVGElement): DOMMatrix {
    if (this.#matrix) return this.#matrix;
    requestAnimationFrame(() => (this.#matrix = null));
    // Whatever draws the drawing anew may have thrown them out.
    if (this.#dots?.[0].parentNode !== drawing) this.#dots = dotsIn(drawing);
    return (this.#matrix = between(drawing, this.#dots));
  }

  putAway(): void {
    this.#dots?.forEach((dot) => dot.remove());
    this.#dots = this.#matrix = null;
  }
}

function dotsIn(drawing: SVGSVGElement): Dots {
  const dots: Dots = [dotAt(drawing, 0, 0), dotAt(drawing, SPAN, 0), dotAt(drawing, 0, SPAN)];
  drawing.append(...dots);
  return dots;
}

function between(drawing: SVGSVGElement, dots: Dots): DOMMatrix {
  const [origin, right, down] = dots.map(centre) as [Point, Point, Point];
  const zoom = unseenZoom(drawing);
  const per = ({ x, y }: Point): [number, number] => [((x - origin.x) / SPAN) * zoom, ((y - origin.y) / SPAN) * zoom];
  return new DOMMatrix([...per(right), ...per(down), origin.x * zoom, origin.y * zoom]);
}

function dotAt(drawing: SVGSVGElement, x: number, y: number): SVGCircleElement {
  const dot = drawing.ownerDocument.createElementNS('http://www.w3.org/2000/svg', 'circle');
  for (const [name, value] of Object.entries({ cx: x, cy: y, r: 1, visibility: 'hidden' })) dot.setAttribute(name, String(value));
  return dot;
}

/** The middle of the upright box around a dot is its centre, however the page turns it. */
function centre(dot: SVGCircleElement): Point {
  const { left, right, top, bottom } = dot.getBoundingClientRect();
  return { x: (left + right) / 2, y: (top + bottom) / 2 };
}

/** Before the `zoom` property was made a standard, and with it `currentCSSZoom`, boxes came in px of what is zoomed. */
function unseenZoom(drawing: Element): number {
  if ('currentCSSZoom' in drawing) return 1;
  let zoom = 1;
  for (let at: Element | null = drawing; at; at = outside(at)) zoom *= Number.parseFloat(getComputedStyle(at).zoom) || 1;
  return zoom;
}

/** The element around another, through slots and shadow roots. */
function outside(element: Element): Element | null {
  return element.assignedSlot ?? element.parentElement ?? ((element.getRootNode() as ShadowRoot).host as Element | undefined) ?? null;
}
