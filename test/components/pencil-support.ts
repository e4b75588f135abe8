import { fixture, html } from '@open-wc/testing';
import '../../components/pencil/define.js';
import type { AstigCase } from '../../components/case/case.js';
import type { AstigPencil } from '../../components/pencil/pencil.js';
import type { AstigViewEvent } from '../../components/pencil/pencil.events.js';
import type { EyePlan } from '../../core/index.js';
import { bringIntoView, drawn, listen, onScreen } from './support.js';
import type { ClientPoint, Log } from './support.js';

/** An oblique cornea without any plan: what remains is what was measured. Invented. */
export const OBLIQUE: EyePlan = { eye: 'right', flatK: 42, steepK: 44, steepMeridian: 60 };

export interface Fixture {
  eye: AstigCase;
  view: AstigPencil;
  root: ShadowRoot;
  /** What has been fired at the page. */
  log: Log & { views: AstigViewEvent[] };
}

interface Options {
  plan?: EyePlan;
  width?: number;
  /** Attributes of the element. */
  set?: Record<string, string>;
  style?: string;
}

/** A case and its bundle at a known width, measured and drawn. */
export async function pencilFixture({ plan = OBLIQUE, width = 420, set = {}, style = '' }: Options = {}): Promise<Fixture> {
  const box = await fixture<HTMLElement>(html`<div><astig-case .plan=${plan}><div></div></astig-case></div>`);
  const view = document.createElement('astig-pencil');
  for (const [name, value] of Object.entries(set)) view.setAttribute(name, value);
  const plate = box.querySelector('div')!;
  box.setAttribute('style', style);
  plate.setAttribute('style', `inline-size: ${width}px`);
  plate.append(view);
  const views: AstigViewEvent[] = [];
  box.addEventListener('astig-view', (event) => views.push(event));
  await drawn(view);
  await bringIntoView(view.shadowRoot!.querySelector('svg') ?? view);
  return { eye: box.querySelector('astig-case')!, view, root: view.shadowRoot!, log: { ...listen(box), views } };
}

/** A point of the drawing on the screen, away from the knob: px from the middle of the bundle. */
export const inDrawing = ({ root }: Pick<Fixture, 'root'>, x: number, y: number): ClientPoint => onScreen(root.querySelector('svg')!, x, y);

export interface Seen {
  middle: { x: number; y: number };
  /** On the screen, degrees counter-clockwise in (0, 180]. */
  direction: number;
  length: number;
}

/** A line focus as drawn. */
export function lineSeen(root: ShadowRoot, part: 'front-line' | 'back-line'): Seen {
  const { x1, y1, x2, y2 } = root.querySelector<SVGLineElement>(`[part="${part}"] .focal`)!;
  const [dx, dy] = [x2.baseVal.value - x1.baseVal.value, y2.baseVal.value - y1.baseVal.value];
  const angle = (Math.atan2(-dy, dx) * 180) / Math.PI;
  return { middle: { x: x1.baseVal.value + dx / 2, y: y1.baseVal.value + dy / 2 }, direction: angle > 0 ? angle : angle + 180, length: Math.hypot(dx, dy) };
}

/** An ellipse as drawn: centre and full axes. */
export function ellipseSeen(root: ShadowRoot, selector: string): { x: number; y: number; longer: number; shorter: number; turned: number } {
  const ellipse = root.querySelector<SVGEllipseElement>(selector)!;
  const { e, f, a, b } = ellipse.transform.baseVal.consolidate()!.matrix;
  return { x: e, y: f, longer: 2 * ellipse.rx.baseVal.value, shorter: 2 * ellipse.ry.baseVal.value, turned: (Math.atan2(-b, a) * 180) / Math.PI };
}

/** What is said of the drawing. */
export const said = (root: ShadowRoot): string => root.querySelector('svg')!.getAttribute('aria-label')!.replaceAll('\u00a0', ' ');
