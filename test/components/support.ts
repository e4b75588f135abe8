import { fixture, html } from '@open-wc/testing';
import { sendKeys, sendMouse } from '@web/test-runner-commands';
import type { TemplateResult } from 'lit';
import '../../components/define.js';
import type { AstigCase } from '../../components/case/case.js';
import type { AstigCornea } from '../../components/cornea/cornea.js';
import type { AstigChangeEvent, AstigInputEvent } from '../../components/internal/events.js';
import { touch } from '../engine.js';
import { bringIntoView, middleOf, onScreen } from './place.js';
import type { ClientPoint } from './place.js';
import { until } from './until.js';

export { bringIntoView, onScreen, until };
export type { ClientPoint };

/** An eye of about 1 D against the rule with an entry and an arc: invented. */
export const CEDAR = {
  eye: 'right',
  flatK: 43,
  steepK: 44,
  steepMeridian: 180,
  age: 70,
  incisionSite: 180,
  incisionWidth: 2.75,
  arcSite: 0,
  arcLength: 30,
  arcCount: 1,
  arcDepth: 500,
  localThickness: 650,
} as const;

export interface Log {
  inputs: AstigInputEvent[];
  changes: AstigChangeEvent[];
}

/** Collects the events that reach an element. */
export function listen(target: EventTarget): Log {
  const log: Log = { inputs: [], changes: [] };
  target.addEventListener('astig-input', (event) => log.inputs.push(event as AstigInputEvent));
  target.addEventListener('astig-change', (event) => log.changes.push(event as AstigChangeEvent));
  return log;
}

/** A case with the common-practice plan and a cornea of a known width, measured and drawn. */
export async function corneaFixture(wrap: (inner: TemplateResult) => TemplateResult = (inner) => inner): Promise<{ eye: AstigCase; cornea: AstigCornea }> {
  const inner = html`<astig-case .plan=${CEDAR}><div class="plate-for-test"><astig-cornea></astig-cornea></div></astig-case>`;
  const root = await fixture<HTMLElement>(html`<div><style>.plate-for-test { inline-size: 400px; }</style>${wrap(inner)}</div>`);
  const eye = root.querySelector('astig-case')!;
  const cornea = root.querySelector('astig-cornea')!;
  await drawn(cornea);
  // The drawing, not the key below it.
  await bringIntoView(cornea.shadowRoot!.querySelector('svg')!);
  return { eye, cornea };
}

/** Waits until an element has been measured and drawn anew. */
export async function drawn(...elements: { updateComplete: Promise<boolean> }[]): Promise<void> {
  for (let round = 0; round < 3; round += 1) {
    await new Promise(requestAnimationFrame);
    for (const element of elements) await element.updateComplete;
  }
}

/** Client position of the centre of a part, whole pixels as the mouse has them. */
export function centreOf(host: Element, selector: string, index = 0): ClientPoint {
  const element = host.shadowRoot!.querySelectorAll(selector)[index];
  if (!element) throw new Error(`no ${selector} number ${index}`);
  return middleOf(element);
}

/** Client position on the eye: degrees on the dial as drawn facing the patient, radius in mm. */
export function onEye(cornea: Element, degrees: number, millimetres: number): ClientPoint {
  const svg = cornea.shadowRoot!.querySelector('svg')!;
  const limbus = svg.querySelector<SVGCircleElement>('[part~="limbus"]')!;
  const radius = (limbus.r.baseVal.value / 5.85) * millimetres;
  const angle = (degrees * Math.PI) / 180;
  return onScreen(svg, radius * Math.cos(angle), -radius * Math.sin(angle));
}

/** Drags with the real mouse, in `steps` moves, and lets go unless told to hold. */
export async function dragMouse(from: ClientPoint, to: ClientPoint, { steps = 4, hold = false } = {}): Promise<void> {
  await sendMouse({ type: 'move', position: from });
  await sendMouse({ type: 'down' });
  for (let step = 1; step <= steps; step += 1) {
    const share = step / steps;
    await sendMouse({ type: 'move', position: [Math.round(from[0] + (to[0] - from[0]) * share), Math.round(from[1] + (to[1] - from[1]) * share)] });
  }
  if (!hold) await sendMouse({ type: 'up' });
}

/** Drags with a real touch. */
export async function dragTouch(from: ClientPoint, to: ClientPoint, end: 'end' | 'cancel' = 'end'): Promise<void> {
  await touch('start', from);
  for (let step = 1; step <= 4; step += 1) {
    const share = step / 4;
    await touch('move', [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share]);
    // A browser may join movements within a frame into one.
    await new Promise(requestAnimationFrame);
  }
  await touch(end);
  // The command returns before the page has heard of it.
  for (let frame = 0; frame < 3; frame += 1) await new Promise(requestAnimationFrame);
}

/** Presses a key, with modifiers before it: `Shift+ArrowLeft`. */
export async function press(keys: string): Promise<void> {
  const parts = keys.split('+');
  const key = parts.pop()!;
  for (const modifier of parts) await sendKeys({ down: modifier });
  await sendKeys({ press: key });
  for (const modifier of parts.reverse()) await sendKeys({ up: modifier });
}

/** Difference of two directions, degrees in [0, 180]. */
export function apart(a: number, b: number): number {
  return Math.abs(((a - b + 540) % 360) - 180);
}

/** Mid-angle on the dial of a drawn path, degrees, facing the patient. */
export function drawnAt(cornea: Element, selector: string, index = 0): number {
  const path = cornea.shadowRoot!.querySelectorAll<SVGGeometryElement>(selector)[index]!;
  const middle = path.getPointAtLength(path.getTotalLength() / 2);
  return (Math.atan2(-middle.y, middle.x) * 180) / Math.PI;
}
