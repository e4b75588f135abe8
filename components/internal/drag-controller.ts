import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Point } from './geometry.js';
import { ScreenRuler, screenMatrix } from './screen-matrix.js';

/** What a drawing does with the pointer. Points are in user units of the drawing. */
export interface DragTarget<Handle> {
  /** The drawing, once it is there. */
  surface(): SVGSVGElement | null;
  /** The handle under a pointer, or null; `reach` is the radius in user units within which a handle counts as hit. */
  pick(point: Point, reach: number): Handle | null;
  start(handle: Handle, point: Point): void;
  move(handle: Handle, point: Point, event: PointerEvent): void;
  end(handle: Handle): void;
  cancel(handle: Handle): void;
}

/** Half of the 44 CSS px that a target must measure (WCAG 2.5.5). */
export const REACH = 22;

/**
 * Drags by pointer: primary button and primary pointer only, captured, ended by release, undone by Escape,
 * `pointercancel` or removal of the element. Works under any transform of the host page, since every point goes
 * through the drawing's own screen matrix.
 */
export class DragController<Handle> implements ReactiveController {
  #active: { handle: Handle; pointer: number; listeners: AbortController } | null = null;

  readonly #ruler = new ScreenRuler();

  constructor(
    host: ReactiveControllerHost,
    private readonly target: DragTarget<Handle>,
  ) {
    host.addController(this);
  }

  /** The handle that is being dragged. */
  get handle(): Handle | null {
    return this.#active?.handle ?? null;
  }

  hostDisconnected(): void {
    this.#abandon();
  }

  /** User units at a client position, and how many of them make one CSS px on the screen. */
  locate(event: { clientX: number; clientY: number }): { point: Point; perPixel: number } | null {
    const surface = this.target.surface();
    if (!surface) return null;
    const matrix = this.#active ? this.#ruler.matrix(surface) : screenMatrix(surface);
    const scale = Math.sqrt(Math.abs(matrix.a * matrix.d - matrix.b * matrix.c));
    if (!(scale > 0)) return null;
    const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    return { point: { x, y }, perPixel: 1 / scale };
  }

  readonly onPointerDown = (event: PointerEvent): void => {
    if (this.#active || event.button !== 0 || !event.isPrimary) return;
    const located = this.locate(event);
    const handle = located && this.target.pick(located.point, REACH * located.perPixel);
    if (!located || handle === null) return;
    // Keeps the page from selecting text and from taking the focus that `start` gives.
    event.preventDefault();
    const surface = this.target.surface()!;
    const listeners = new AbortController();
    const { signal } = listeners;
    this.#active = { handle, pointer: event.pointerId, listeners };
    surface.addEventListener('pointermove', this.#onPointerMove, { signal });
    surface.addEventListener('pointerup', this.#onPointerUp, { signal });
    surface.addEventListener('pointercancel', this.#onPointerLost, { signal });
    surface.addEventListener('lostpointercapture', this.#onPointerLost, { signal });
    surface.ownerDocument.addEventListener('keydown', this.#onKeydown, { signal, capture: true });
    surface.setPointerCapture(event.pointerId);
    this.target.start(handle, located.point);
  };

  readonly #onPointerMove = (event: PointerEvent): void => {
    if (!this.#mine(event)) return;
    // A page that is turned by swiping, such as a slide deck, shall not take this for a swipe.
    event.stopPropagation();
    const located = this.locate(event);
    if (located) this.target.move(this.#active!.handle, located.point, event);
  };

  readonly #onPointerUp = (event: PointerEvent): void => {
    if (!this.#mine(event)) return;
    const { handle } = this.#active!;
    this.#release();
    this.target.end(handle);
  };

  readonly #onPointerLost = (event: PointerEvent): void => {
    if (this.#mine(event)) this.#abandon();
  };

  readonly #onKeydown = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape') return;
    // A dialog around the drawing should not close because a drag was given up.
    event.preventDefault();
    event.stopPropagation();
    this.#abandon();
  };

  #mine(event: PointerEvent): boolean {
    return this.#active?.pointer === event.pointerId;
  }

  #abandon(): void {
    if (!this.#active) return;
    const { handle } = this.#active;
    this.#release();
    this.target.cancel(handle);
  }

  #release(): void {
    const { listeners, pointer } = this.#active!;
    this.#active = null;
    listeners.abort();
    this.#ruler.putAway();
    const surface = this.target.surface();
    if (surface?.hasPointerCapture(pointer)) surface.releasePointerCapture(pointer);
  }
}
