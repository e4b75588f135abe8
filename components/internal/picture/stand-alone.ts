/**
 * What style sheets give the shapes of a drawing, with the value that an SVG file takes without it. Everything else of a
 * drawing is geometry and stands in attributes already.
 */
const PAINT: Readonly<Record<string, string>> = {
  fill: 'rgb(0, 0, 0)',
  'fill-opacity': '1',
  stroke: 'none',
  'stroke-width': '1px',
  'stroke-opacity': '1',
  'stroke-dasharray': 'none',
  'stroke-linecap': 'butt',
  'stroke-linejoin': 'miter',
  opacity: '1',
};

/** The same for texts. Family and size differ from one reader to the next, so they are always written. */
const TYPE: Readonly<Record<string, string>> = {
  'font-family': '',
  'font-size': '',
  'font-weight': '400',
  'font-style': 'normal',
  'text-anchor': 'start',
  'dominant-baseline': 'auto',
  'paint-order': 'normal',
  direction: 'ltr',
  'unicode-bidi': 'normal',
};

/** What makes sense in the page only. */
const OF_THE_PAGE = ['class', 'part', 'role', 'aria-label', 'aria-hidden', 'tabindex'];

const SVG = 'http://www.w3.org/2000/svg';

/**
 * The drawing of an element as an SVG file of its own: looks resolved as they are now, the ground behind it, its
 * description as title, and nothing in it that can be taken hold of.
 * @throws Error while there is no drawing, for instance without a case.
 */
export function standAlone(host: HTMLElement): string {
  const drawing = host.shadowRoot?.querySelector<SVGSVGElement>('.plate svg:is([role=img], [role=group])');
  if (!drawing) throw new Error(`${host.localName}: there is no drawing to export.`);
  const file = drawing.cloneNode(true) as SVGSVGElement;
  settle(drawing, file);
  const [x, y, width, tall] = boxOf(drawing) as [number, number, number, number];
  const height = tall + addBelow(host, file, { x, y: y + tall, width });
  file.setAttribute('viewBox', [x, y, width, height].join(' '));
  const ground = make('rect', { x, y, width, height, fill: groundOf(host) });
  const title = make('title', {});
  title.textContent = drawing.getAttribute('aria-label');
  file.prepend(title, ground);
  for (const [name, value] of Object.entries({ width, height })) file.setAttribute(name, String(value));
  return new XMLSerializer().serializeToString(file);
}

/** What a reader needs of what stands below the drawing in the page: `below` has it, as wide as the drawing. @returns its height */
function addBelow(host: HTMLElement, file: Element, place: { x: number; y: number; width: number }): number {
  const shown = host.shadowRoot!.querySelector<SVGSVGElement>('.plate .below');
  if (!shown) return 0;
  const height = boxOf(shown)[3]!;
  const copy = shown.cloneNode(true) as SVGSVGElement;
  settle(shown, copy);
  for (const [name, value] of Object.entries({ ...place, height })) copy.setAttribute(name, String(value));
  file.append(copy);
  return height;
}

function boxOf(drawing: Element): number[] {
  return drawing.getAttribute('viewBox')!.split(' ').map(Number);
}

/** Writes what is seen of `shown` into `copy`, and takes out what is not seen. */
function settle(shown: Element, copy: Element): void {
  const style = getComputedStyle(shown);
  for (const name of OF_THE_PAGE) copy.removeAttribute(name);
  const leaf = shown.children.length === 0 || shown.localName === 'text';
  for (const [name, usual] of Object.entries(leaf ? { ...PAINT, ...(shown.localName === 'text' && TYPE) } : { opacity: '1' })) {
    const value = style.getPropertyValue(name);
    if (value !== usual) copy.setAttribute(name, value);
    else copy.removeAttribute(name);
  }
  const kept = [...copy.children];
  [...shown.children].forEach((child, index) => {
    if (isSeen(child)) settle(child, kept[index]!);
    else kept[index]!.remove();
  });
  // Lit leaves comments where it will write again.
  for (const node of [...copy.childNodes]) if (node.nodeType === Node.COMMENT_NODE) node.remove();
}

/** Handles belong to the page; `hit`, `field` and `grab` are the areas in which something can be taken or pointed at. */
function isSeen(shape: Element): boolean {
  const { display, visibility } = getComputedStyle(shape);
  return display !== 'none' && visibility === 'visible' && !shape.matches('.handle, .hit, .field, .grab');
}

/** The ground as the page shows it: the first that is painted behind the drawing, else that of the element. */
function groundOf(host: HTMLElement): string {
  // By what a node has, not by `instanceof`: in a frame the classes are others.
  for (let node: Node | null = host; node; node = node.parentNode ?? (node as Partial<ShadowRoot>).host ?? null) {
    const painted = node.nodeType === Node.ELEMENT_NODE ? getComputedStyle(node as Element).backgroundColor : '';
    if (painted && !/transparent|, 0\)$|\/ 0\)$/.test(painted)) return painted;
  }
  return getComputedStyle(host.shadowRoot!.querySelector('.probe')!).backgroundColor;
}

function make(name: string, attributes: Record<string, string | number>): SVGElement {
  const element = document.createElementNS(SVG, name);
  for (const [attribute, value] of Object.entries(attributes)) element.setAttribute(attribute, String(value));
  return element;
}
