import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { BlurOptions, Picture } from '../../core/sight.js';
import { blurPicture } from '../internal/blur/blur-client.js';
import type { BlurClient, BlurListener } from '../internal/blur/blur-client.js';
import { SIDES } from './sight.optics.js';
import type { Side } from './sight.optics.js';

/** One of the two pictures. */
class Print implements BlurListener {
  shown: Picture | null = null;
  failed = false;
  private client: BlurClient | null = null;
  private source: Picture | null = null;
  /** The options that were asked for last, and those of the picture that is shown. */
  private asked = '';
  private made = '';

  constructor(private readonly done: () => void) {}

  get waiting(): boolean {
    return this.client !== null && !this.failed && this.asked !== this.made;
  }

  show(source: Picture, options: BlurOptions): void {
    if (source !== this.source) this.open(source);
    const asked = JSON.stringify(options);
    if (asked === this.asked) return;
    this.asked = asked;
    this.client!.show(options);
  }

  picture(blurred: Picture, options: BlurOptions): void {
    this.shown = blurred;
    this.made = JSON.stringify(options);
    this.failed = false;
    this.done();
  }

  problem(): void {
    this.shown = null;
    this.failed = true;
    this.done();
  }

  close(): void {
    this.client?.dispose();
    this.client = null;
    this.source = null;
    this.shown = null;
    this.failed = false;
    this.asked = this.made = '';
  }

  private open(source: Picture): void {
    // What was shown stays until there is something new: an empty frame would flicker.
    const { shown } = this;
    this.close();
    this.shown = shown;
    this.source = source;
    this.client = blurPicture(source, this);
  }
}

/**
 * Blurs one picture twice and puts the results on the canvases in `.before` and `.after`, past the rendering of the
 * element: a new picture costs the page one copy of pixels. The work is done elsewhere, and the newest request wins.
 */
export class Darkroom implements ReactiveController {
  private readonly prints: Record<Side, Print> = { before: new Print(() => this.finished('before')), after: new Print(() => this.finished('after')) };
  private readonly hung = new WeakMap<HTMLCanvasElement, Picture>();
  private waiters: (() => void)[] = [];
  private failedBefore = false;
  /** Whether the picture to be blurred is still on its way. */
  private expecting = false;

  constructor(private readonly host: ReactiveControllerHost & HTMLElement) {
    host.addController(this);
  }

  /** Whether the blur could not be calculated. */
  get failed(): boolean {
    return SIDES.some((side) => this.prints[side].failed);
  }

  private get waiting(): boolean {
    return this.expecting || SIDES.some((side) => this.prints[side].waiting);
  }

  /** What is shown; null while it is not both. */
  get shown(): Record<Side, Picture> | null {
    const { before, after } = this.prints;
    return before.shown && after.shown ? { before: before.shown, after: after.shown } : null;
  }

  /** Asks for a picture as it looks with an error in focus on either side. */
  show(source: Picture, options: Record<Side, BlurOptions>): void {
    this.expecting = false;
    for (const side of SIDES) this.prints[side].show(source, options[side]);
  }

  /** Shows nothing until the picture to be blurred has come. */
  expect(): void {
    this.expecting = true;
    this.close();
  }

  /** Shows nothing. */
  clear(): void {
    this.expecting = false;
    this.close();
    this.release();
  }

  /** Resolves when what was asked for is shown, or could not be made. */
  settled(): Promise<void> {
    return this.waiting ? new Promise((resolve) => this.waiters.push(resolve)) : Promise.resolve();
  }

  hostUpdated(): void {
    for (const side of SIDES) this.hang(side);
  }

  hostDisconnected(): void {
    this.clear();
  }

  private finished(side: Side): void {
    this.hang(side);
    if (this.failed !== this.failedBefore) {
      this.failedBefore = this.failed;
      this.host.requestUpdate();
    }
    if (!this.waiting) this.release();
  }

  private close(): void {
    for (const side of SIDES) this.prints[side].close();
  }

  private hang(side: Side): void {
    const { shown } = this.prints[side];
    const canvas = this.host.shadowRoot?.querySelector<HTMLCanvasElement>(`.${side} canvas`);
    if (!canvas || !shown || this.hung.get(canvas) === shown) return;
    this.hung.set(canvas, shown);
    // Setting a size empties the canvas.
    if (canvas.width !== shown.width) canvas.width = shown.width;
    if (canvas.height !== shown.height) canvas.height = shown.height;
    canvas.getContext('2d')?.putImageData(new ImageData(shown.data as ImageDataArray, shown.width, shown.height), 0, 0);
  }

  private release(): void {
    for (const resolve of this.waiters.splice(0)) resolve();
  }
}
