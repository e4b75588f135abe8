import { fixture, html } from '@open-wc/testing';
import { sendKeys, sendMouse } from '@web/test-runner-commands';
import type { TemplateResult } from 'lit';
import { suggestPlans } from '../../core/index.js';
import type { PlanLimits } from '../../core/index.js';
import '../../components/case/define.js';
import '../../components/options/define.js';
import type { AstigCase } from '../../components/case/case.js';
import type { AstigOptions } from '../../components/options/options.js';
import { bringIntoView, listen, until } from './support.js';
import type { Log } from './support.js';

/** A left eye of 2 D, steep near 90°, with everything measured and little planned: invented. */
export const ROWAN = {
  eye: 'left',
  flatK: 42.5,
  steepK: 44.5,
  steepMeridian: 95,
  age: 70,
  backSurface: 'typical',
  incisionSite: 0,
  incisionWidth: 2.4,
  arcDepth: 520,
  localThickness: 640,
} as const;

/** The chances of the plans that the core suggests, as the list writes them. */
export function chances(limits: PlanLimits = {}, plan: object = ROWAN): string[] {
  return suggestPlans(plan, limits).map(({ ofHundred }) => `${ofHundred} of 100`);
}

/** A list of plans in its case, spoken to in what a user does. */
export class List {
  constructor(
    readonly eye: AstigCase,
    readonly view: AstigOptions,
    readonly log: Log,
  ) {}

  static async open(plan: object = ROWAN, view: TemplateResult = html`<astig-options></astig-options>`): Promise<List> {
    const eye = await fixture<AstigCase>(html`<astig-case .plan=${plan}>${view}</astig-case>`);
    const list = new List(eye, eye.querySelector('astig-options')!, listen(eye));
    await list.view.ready;
    return list;
  }

  get root(): ShadowRoot {
    return this.view.shadowRoot!;
  }

  get counts(): [inputs: number, changes: number] {
    return [this.log.inputs.length, this.log.changes.length];
  }

  // A failed comparison of elements hangs the runner, which prints them whole: strings are compared instead.

  /** Text of the first match, spaces made plain; null without one. */
  text(selector: string): string | null {
    return this.root.querySelector(selector)?.textContent.replace(/\s+/g, ' ').trim() ?? null;
  }

  /** Text of one cell of every row, as they stand. */
  column(selector: string): string[] {
    return [...this.root.querySelectorAll(`tbody tr ${selector}`)].map((cell) => cell.textContent.replace(/\s+/g, ' ').trim());
  }

  get ranks(): number[] {
    return [...this.root.querySelectorAll<HTMLElement>('tbody tr')].map(({ dataset }) => Number(dataset['rank']));
  }

  /** Ranks of the rows that are marked as the present plan. */
  get inUse(): number[] {
    return [...this.root.querySelectorAll<HTMLElement>('[aria-current=true]')].map(({ dataset }) => Number(dataset['rank']));
  }

  get spoken(): string | null {
    return this.text('[role=status]');
  }

  get sorts(): (string | null)[] {
    return [...this.root.querySelectorAll('.sortable')].map((head) => head.getAttribute('aria-sort'));
  }

  button(rank: number): HTMLButtonElement {
    return this.find(`[part=choose][data-rank="${rank}"]`) as HTMLButtonElement;
  }

  find(selector: string): HTMLElement {
    const found = this.root.querySelector<HTMLElement>(selector);
    if (!found) throw new Error(`no ${selector}`);
    return found;
  }

  async click(element: Element): Promise<void> {
    await bringIntoView(element);
    const { x, y, width, height } = element.getBoundingClientRect();
    await sendMouse({ type: 'click', position: [Math.round(x + width / 2), Math.round(y + height / 2)] });
    await this.view.ready;
  }

  async openForm(): Promise<void> {
    await this.click(this.find('.limits > summary'));
  }

  /** Waits for what is loaded when somebody asks for it. */
  async loaded(selector: string): Promise<void> {
    await until(() => this.root.querySelector(selector), selector);
  }

  /** Replaces the text of a field of the form and leaves it by Tab. */
  async fill(id: string, text: string): Promise<void> {
    const input = this.find(`#${id}`) as HTMLInputElement;
    input.focus();
    input.select();
    if (text === '') await sendKeys({ press: 'Delete' });
    else await sendKeys({ type: text });
    await sendKeys({ press: 'Tab' });
    await this.view.ready;
  }

  value(id: string): string {
    return (this.find(`#${id}`) as HTMLInputElement).value;
  }

  note(id: string): string | null {
    return this.text(`#${id}-note`);
  }
}
