import { fixture, html } from '@open-wc/testing';
import { sendKeys, sendMouse } from '@web/test-runner-commands';
import '../../components/case/define.js';
import '../../components/entry/define.js';
import type { AstigCase } from '../../components/case/case.js';
import type { AstigEntry } from '../../components/entry/entry.js';
import { bringIntoView, listen } from './support.js';
import type { Log } from './support.js';

/** A left eye with everything planned, none of it symmetrical: invented. */
export const DOGWOOD = {
  eye: 'left',
  flatK: 42.25,
  steepK: 44,
  steepMeridian: 97,
  age: 71,
  backSurface: '0.30@175',
  incisionSite: 20,
  incisionWidth: 2.75,
  arcCount: 2,
  arcSite: 100,
  arcLength: 45,
  arcDepth: 500,
  localThickness: 620,
  lensCylinder: 1.5,
  lensMeridian: 95,
} as const;

/** A form in its case, spoken to in what a user does. */
export class Form {
  constructor(
    readonly eye: AstigCase,
    readonly entry: AstigEntry,
    readonly log: Log,
  ) {}

  static async open(plan: object = {}): Promise<Form> {
    const eye = await fixture<AstigCase>(html`<astig-case .plan=${plan}><astig-entry></astig-entry></astig-case>`);
    const form = new Form(eye, eye.querySelector('astig-entry')!, listen(eye));
    await form.settled();
    return form;
  }

  get root(): ShadowRoot {
    return this.entry.shadowRoot!;
  }

  get counts(): [inputs: number, changes: number] {
    return [this.log.inputs.length, this.log.changes.length];
  }

  /** Every source that the events have named, once. */
  get sources(): string[] {
    return [...new Set([...this.log.inputs, ...this.log.changes].map(({ source }) => source))];
  }

  async settled(): Promise<void> {
    for (let round = 0; round < 2; round += 1) {
      await this.eye.updateComplete;
      await this.entry.updateComplete;
    }
  }

  field(id: string): HTMLInputElement {
    const input = this.root.getElementById(id);
    if (!input) throw new Error(`no field ${id}`);
    return input as HTMLInputElement;
  }

  text(id: string): string {
    return this.field(id).value;
  }

  /** What is said below a field, limits or error. */
  note(id: string): string {
    return this.root.getElementById(`${id}-note`)!.textContent!.replaceAll('\u00a0', ' ');
  }

  aside(id: string): string {
    return this.root.getElementById(`${id}-aside`)!.textContent!;
  }

  isWrong(id: string): boolean {
    return this.field(id).getAttribute('aria-invalid') === 'true' && this.root.getElementById(`${id}-note`)!.matches('[part~=error]');
  }

  /** Puts the caret into a field, all of its text selected. */
  async enter(id: string): Promise<void> {
    this.field(id).focus();
    this.field(id).select();
    await this.settled();
  }

  // A failed comparison of elements hangs the runner, which prints them whole: strings are compared instead.

  /** What the button of the offer to mirror says, null without an offer. */
  get offer(): string | null {
    return this.button('mirror')?.textContent ?? null;
  }

  /** What the alert says, null without one. */
  get alert(): string | null {
    return this.root.querySelector('[role=alert]')?.textContent ?? null;
  }

  /** Name and value of the switch that has the focus, or what the focused button does. */
  get focused(): string {
    const element = this.root.activeElement as (HTMLInputElement & HTMLButtonElement) | null;
    return element?.dataset['action'] ?? `${element?.name}=${element?.value}`;
  }

  /** Replaces the text of a field key by key and stays in it. */
  async retype(id: string, text: string): Promise<void> {
    await this.enter(id);
    if (text === '') await sendKeys({ press: 'Delete' });
    else await sendKeys({ type: text });
    await this.settled();
  }

  /** Replaces the text of a field and leaves it by Tab. */
  async fill(id: string, text: string): Promise<void> {
    await this.retype(id, text);
    await sendKeys({ press: 'Tab' });
    await this.settled();
  }

  radio(name: string, value: string): HTMLInputElement {
    const all = [...this.root.querySelectorAll<HTMLInputElement>(`.segment input[name=${name}]`)];
    const found = all.find((radio) => radio.value === value);
    if (!found) throw new Error(`no switch ${name}=${value}`);
    return found;
  }

  on(name: string): string | undefined {
    return this.root.querySelector<HTMLInputElement>(`input[name=${name}]:checked`)?.value;
  }

  async choose(name: string, value: string): Promise<void> {
    await this.click(this.radio(name, value).parentElement!);
  }

  button(action: string): HTMLButtonElement | null {
    return this.root.querySelector(`button[data-action=${action}]`);
  }

  async press(action: string): Promise<void> {
    await this.click(this.button(action)!);
  }

  private async click(element: Element): Promise<void> {
    await bringIntoView(element);
    const { x, y, width, height } = element.getBoundingClientRect();
    await sendMouse({ type: 'click', position: [Math.round(x + width / 2), Math.round(y + height / 2)] });
    await this.settled();
  }
}
