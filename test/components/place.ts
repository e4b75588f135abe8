/** Places on the screen, in every engine. */
import { engine } from '../engine.js';

export type ClientPoint = [x: number, y: number];

/** Client position of the middle of an element. WebKit's boxes are in px of what `zoom` zooms, its pointer's are not. */
export function middleOf(element: Element): ClientPoint {
  const { x, y, width, height } = element.getBoundingClientRect();
  let zoom = 1;
  if (engine === 'webkit') for (let at: Element | null = element; at; at = at.parentElement ?? (at.getRootNode() as ShadowRoot).host) zoom *= Number(getComputedStyle(at).zoom);
  return [Math.round((x + width / 2) * zoom), Math.round((y + height / 2) * zoom)];
}

/** Client position of a point of a drawing, user units: that of a dot put there, since `getScreenCTM` is not to be trusted in a page that scales, turns or zooms the drawing. */
export function onScreen(drawing: SVGSVGElement, x: number, y: number): ClientPoint {
  const dot = document.createElementNS('http://www.w3.org/2000/svg', 'circle');
  dot.setAttribute('r', '0.5');
  dot.setAttribute('transform', `translate(${x} ${y})`);
  drawing.append(dot);
  const point = middleOf(dot);
  dot.remove();
  return point;
}

/**
 * Scrolls an element to the middle. WebKit puts the upper edge of an SVG there, so the HTML around it is scrolled first,
 * and the page then by what is missing. It may also scroll back a frame later, when the page has just become shorter.
 */
export async function bringIntoView(element: Element): Promise<void> {
  let top = NaN;
  for (let still = 0; still < 2; still += 1) {
    (element.closest('.plate') ?? element).scrollIntoView({ block: 'center' });
    window.scrollBy(0, middleOf(element)[1] - window.innerHeight / 2);
    const { y } = element.getBoundingClientRect();
    if (y !== top) still = 0;
    top = y;
    await new Promise(requestAnimationFrame);
  }
}
