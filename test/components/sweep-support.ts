import { fixture, html } from '@open-wc/testing';
import type { TemplateResult } from 'lit';
import '../../components/sweep/define.js';
import type { AstigCase } from '../../components/case/case.js';
import type { AstigSweep } from '../../components/sweep/sweep.js';
import type { EyePlan } from '../../core/index.js';
import { CEDAR, bringIntoView, drawn, onScreen } from './support.js';
import type { ClientPoint } from './support.js';

export interface Fixture {
  eye: AstigCase;
  view: AstigSweep;
  root: ShadowRoot;
}

interface Options {
  plan?: EyePlan;
  width?: number;
  wrap?: (inner: TemplateResult) => TemplateResult;
}

/** A case with the common-practice plan, changed by `plan`, and its curve at a known width, measured and drawn. */
export async function sweepFixture({ plan = {}, width = 420, wrap = (inner) => inner }: Options = {}): Promise<Fixture> {
  const inner = html`<astig-case .plan=${{ ...CEDAR, ...plan }}><div class="plate-for-test"><astig-sweep></astig-sweep></div></astig-case>`;
  const page = await fixture<HTMLElement>(html`<div><style>.plate-for-test { inline-size: ${width}px; }</style>${wrap(inner)}</div>`);
  const view = page.querySelector('astig-sweep')!;
  await drawn(view);
  await bringIntoView(view);
  return { eye: page.querySelector('astig-case')!, view, root: view.shadowRoot! };
}

/** Where the axes lie in user units, read from the drawing: 0°, 360°, nothing and half a dioptre. */
function axes(root: ShadowRoot): { left: number; right: number; zero: number; half: number } {
  const [floor, good] = ['.floor', '[part="good"]'].map((selector) => root.querySelector<SVGLineElement>(selector)!) as [SVGLineElement, SVGLineElement];
  return { left: floor.x1.baseVal.value, right: floor.x2.baseVal.value, zero: floor.y1.baseVal.value, half: good.y1.baseVal.value };
}

/** Client position of a site and so many dioptres, whole pixels as the mouse has them. */
export function inPlot({ root }: Pick<Fixture, 'root'>, site: number, dioptres: number): ClientPoint {
  const { left, right, zero, half } = axes(root);
  return onScreen(root.querySelector('svg')!, left + ((right - left) * site) / 360, zero + 2 * dioptres * (half - zero));
}

/** What a point of the drawing, in user units, stands for. */
export function meaning(root: ShadowRoot, x: number, y: number): { site: number; dioptres: number } {
  const { left, right, zero, half } = axes(root);
  return { site: (360 * (x - left)) / (right - left), dioptres: (0.5 * (zero - y)) / (zero - half) };
}

/** What the drawn marker stands for. */
export function marker(root: ShadowRoot): { site: number; dioptres: number } {
  const { cx, cy } = root.querySelector<SVGCircleElement>('[part="marker"] .point')!;
  return meaning(root, cx.baseVal.value, cy.baseVal.value);
}

/** What the corners of the drawn curve stand for. */
export function drawnCurve(root: ShadowRoot): { site: number; dioptres: number }[] {
  const path = root.querySelector('[part="curve"]')!.getAttribute('d')!;
  return [...path.matchAll(/[ML]([-\d.]+),([-\d.]+)/g)].map(([, x, y]) => meaning(root, Number(x), Number(y)));
}
