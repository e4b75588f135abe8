import { fixture, html } from '@open-wc/testing';
import { sendKeys, sendMouse } from '@web/test-runner-commands';
import type { TemplateResult } from 'lit';
import type { Picture } from '../../core/sight.js';
import '../../components/case/define.js';
import '../../components/sight/define.js';
import type { AstigCase } from '../../components/case/case.js';
import type { AstigSight } from '../../components/sight/sight.js';
import { bringIntoView } from './place.js';

/** An eye of 2 D with the rule and nothing planned: invented. */
export const MAPLE = { eye: 'right', flatK: 42, steepK: 44, steepMeridian: 90, age: 70 } as const;

/** The pictures of an eye, spoken to in what a user does. */
export class Sight {
  constructor(
    readonly eye: AstigCase,
    readonly view: AstigSight,
  ) {}

  static async open(view: TemplateResult = html`<astig-sight></astig-sight>`, plan: object = MAPLE, lang = 'en'): Promise<Sight> {
    const eye = await fixture<AstigCase>(html`<astig-case lang=${lang} .plan=${plan}>${view}</astig-case>`);
    const sight = new Sight(eye, eye.querySelector('astig-sight')!);
    await sight.view.ready;
    return sight;
  }

  get root(): ShadowRoot {
    return this.view.shadowRoot!;
  }

  // A failed comparison of elements hangs the runner, which prints them whole: strings are compared instead.

  text(selector: string): string | null {
    return this.root.querySelector(selector)?.textContent.replace(/\s+/g, ' ').trim() ?? null;
  }

  find<Found extends Element = HTMLElement>(selector: string): Found {
    const found = this.root.querySelector<Found>(selector);
    if (!found) throw new Error(`no ${selector}`);
    return found;
  }

  /** What is shown on one side. */
  pixels(side: 'before' | 'after'): Picture {
    const canvas = this.find<HTMLCanvasElement>(`.${side} canvas`);
    return canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height) as Picture;
  }

  label(side: 'before' | 'after'): string {
    return this.find(`.${side} canvas`).getAttribute('aria-label')!;
  }

  async set(settings: Partial<AstigSight>): Promise<void> {
    Object.assign(this.view, settings);
    await this.view.ready;
  }

  async plan(plan: object): Promise<void> {
    this.eye.plan = plan;
    await this.view.ready;
  }

  async click(element: Element, share = 0.5): Promise<void> {
    await bringIntoView(element);
    const { x, y, width, height } = element.getBoundingClientRect();
    await sendMouse({ type: 'click', position: [Math.round(x + width * share), Math.round(y + height / 2)] });
    await this.view.ready;
  }

  choice(name: string, value: string): HTMLElement {
    const input = [...this.root.querySelectorAll<HTMLInputElement>(`input[name=${name}]`)].find((one) => one.value === value);
    if (!input) throw new Error(`no choice ${name} ${value}`);
    return input.parentElement!;
  }

  /** Replaces the text of a field and leaves it by Tab. */
  async fill(id: string, text: string): Promise<void> {
    const input = this.find<HTMLInputElement>(`#${id}`);
    input.focus();
    input.select();
    if (text === '') await sendKeys({ press: 'Delete' });
    else await sendKeys({ type: text });
    await sendKeys({ press: 'Tab' });
    await this.view.ready;
  }
}

/** The address of a picture that is painted for a test. */
export function painted(side: number, paint: (context: CanvasRenderingContext2D) => void, height = side): string {
  const canvas = document.createElement('canvas');
  canvas.width = side;
  canvas.height = height;
  const context = canvas.getContext('2d')!;
  context.fillStyle = '#fff';
  context.fillRect(0, 0, side, height);
  context.fillStyle = context.strokeStyle = '#000';
  paint(context);
  return canvas.toDataURL();
}

/** How dark the darkest pixel along a short way through a point is, 0–255: a thin line that is blurred across grows pale. */
export function darkest({ data, width }: Picture, x: number, y: number, reach = 12): number {
  let least = 255;
  for (let dy = -reach; dy <= reach; dy += 1) {
    for (let dx = -reach; dx <= reach; dx += 1) least = Math.min(least, data[4 * ((y + dy) * width + x + dx)]!);
  }
  return least;
}

/** Greatest difference of two pictures in any channel. */
export function difference(a: Picture, b: Picture): number {
  let most = a.data.length === b.data.length ? 0 : 256;
  for (let i = 0; i < a.data.length; i += 1) most = Math.max(most, Math.abs(a.data[i]! - b.data[i]!));
  return most;
}

/** What can be told of a picture that is not the one expected: whether it was painted at all, and how much of it is dark. */
export function told({ data, width, height }: Picture): string {
  let [unpainted, dark] = [0, 0];
  for (let i = 0; i < data.length; i += 4) {
    if (data[i + 3] !== 255) unpainted += 1;
    else if (data[i]! < 128) dark += 1;
  }
  return `${width} × ${height}, ${unpainted} unpainted, ${dark} dark`;
}

/** A picture as a mirror shows it. */
export function mirrored({ data, width, height }: Picture): Picture {
  const turned = new Uint8ClampedArray(data.length);
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) turned.set(data.subarray(4 * (y * width + x), 4 * (y * width + x) + 4), 4 * (y * width + width - 1 - x));
  }
  return { data: turned, width, height };
}
