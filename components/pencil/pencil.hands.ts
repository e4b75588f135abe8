import { nothing, svg } from 'lit';
import type { ReactiveControllerHost, SVGTemplateResult } from 'lit';
import { DragController } from '../internal/drag-controller.js';
import type { DragTarget } from '../internal/drag-controller.js';
import type { Point } from '../internal/geometry.js';
import { handleStyles } from '../internal/handle-styles.js';
import { drawKnob } from '../internal/knob.js';
import { addStyles } from '../internal/restyle.js';
import type { Camera } from './pencil.camera.js';
import { pencilHandsStyles } from './pencil.hands.styles.js';
import type { Mover } from './pencil.controls.js';
import { LIMITS_HERE, turned } from './pencil.settings.js';
import type { Settings } from './pencil.settings.js';

/** Degrees for one px. */
const SPEED = 0.5;

/** The light comes towards the viewer so much that the screen cannot be moved along it: px for one mm over that at its longest. */
const END_ON = 0.2;

export type Grip = 'view' | 'screen';

/** The drawing that is worked on, as it is at the moment of asking. */
export interface Held {
  surface(): SVGSVGElement | null;
  editable(): boolean;
  settings(): Settings;
  camera(): Camera | null;
  /** Where the knob of the screen is drawn. */
  knob(): Point | null;
  /** Where the screen is, mm behind the retina. */
  behind(): number;
  move: Mover;
  /** Puts everything back as it was when something was taken hold of. */
  restore(settings: Settings): void;
}

/** What turns the bundle and moves the screen by the pointer. */
export class PencilHands implements DragTarget<Grip> {
  readonly #drag: DragController<Grip>;
  #start: { point: Point; settings: Settings; behind: number } | null = null;
  #moved = false;

  constructor(
    private readonly host: ReactiveControllerHost & HTMLElement,
    private readonly held: Held,
  ) {
    this.#drag = new DragController<Grip>(host, this);
    addStyles(host, handleStyles);
    addStyles(host, pencilHandsStyles);
  }

  get onPointerDown(): (event: PointerEvent) => void {
    return this.#drag.onPointerDown;
  }

  /** The knob of the screen, on top of the drawing. */
  handle(focused: boolean): SVGTemplateResult | typeof nothing {
    const knob = this.held.knob();
    const camera = this.held.camera();
    if (!knob || !camera || endOn(camera)) return nothing;
    const facing = (Math.atan2(camera.along.y, camera.along.x) * 180) / Math.PI;
    return svg`<g class=${this.#drag.handle === 'screen' ? 'handle held' : 'handle'} part="screen-handle">${drawKnob(knob, focused, facing)}</g>`;
  }

  surface(): SVGSVGElement | null {
    return this.held.surface();
  }

  pick(point: Point, reach: number): Grip | null {
    if (!this.held.editable()) return null;
    const knob = this.held.knob();
    const camera = this.held.camera();
    return knob && camera && !endOn(camera) && Math.hypot(knob.x - point.x, knob.y - point.y) <= reach ? 'screen' : 'view';
  }

  start(_grip: Grip, point: Point): void {
    this.#start = { point, settings: this.held.settings(), behind: this.held.behind() };
    this.#moved = false;
    this.host.requestUpdate();
  }

  move(grip: Grip, { x, y }: Point): void {
    const start = this.#start;
    const camera = this.held.camera();
    if (!start || !camera) return;
    this.#moved = true;
    const [right, down] = [x - start.point.x, y - start.point.y];
    if (grip === 'screen') {
      const { along } = camera;
      const mm = (right * along.x + down * along.y) / (along.x ** 2 + along.y ** 2);
      this.held.move('screen', Math.round((start.behind + mm) * 200) / 200, false);
      return;
    }
    const { min, max } = LIMITS_HERE.tilt;
    // What is near follows the pointer.
    this.held.move('turn', Math.round(turned(start.settings.turn - SPEED * right)), false);
    this.held.move('tilt', Math.round(Math.min(max, Math.max(min, start.settings.tilt + SPEED * down))), false);
  }

  end(grip: Grip): void {
    this.#start = null;
    if (this.#moved) this.held.move(grip === 'screen' ? 'screen' : 'turn', grip === 'screen' ? this.held.settings().screen : this.held.settings().turn, true);
    this.host.requestUpdate();
  }

  cancel(): void {
    if (this.#start) this.held.restore(this.#start.settings);
    this.#start = null;
    this.host.requestUpdate();
  }
}

function endOn({ along, across }: Camera): boolean {
  return Math.hypot(along.x, along.y) < END_ON * 0.1 * Math.hypot(across[0], across[1], across[2], across[3]);
}
