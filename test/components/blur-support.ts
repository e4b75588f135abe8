/** Pictures, listeners and pages of their own for the tests of the live blur. */
import type { BlurClient, blurPicture } from '../../components/internal/blur/blur-client.js';
import { blur, type BlurOptions, type Picture } from '../../core/sight.js';

/** Invented: colours without a pattern, or greys that are calculated once for all three channels. */
export function noise(width: number, height: number, { grey = false } = {}): Picture {
  const data = new Uint8ClampedArray(4 * width * height);
  let seed = 1;
  for (let i = 0; i < data.length; i += 1) {
    if (!grey || i % 4 === 0) seed = (seed * 16_807) % 2_147_483_647;
    data[i] = i % 4 === 3 ? 255 : seed % 256;
  }
  return { data, width, height };
}

/** A cylinder of 2 D aslant. */
export function look(axis: number, more: Partial<BlurOptions> = {}): BlurOptions {
  return { refraction: { sphere: 1, cylinder: -2, axis }, pupilMm: 4, degreesPerPixel: 1 / 60, ...more };
}

export interface Watched {
  client: BlurClient;
  /** Axes of the pictures that came, in turn. */
  axes: number[];
  pictures: Picture[];
  problems: Error[];
  /** The next picture or problem. */
  next(): Promise<Picture | Error>;
}

/** A client whose listener keeps what comes; its first `next` may be asked for before or after it comes. */
export function watch(open: typeof blurPicture, picture: Picture): Watched {
  const came: (Picture | Error)[] = [];
  const waiting: ((what: Picture | Error) => void)[] = [];
  const take = (what: Picture | Error): void => {
    const first = waiting.shift();
    if (first) first(what);
    else came.push(what);
  };
  const watched: Omit<Watched, 'client'> = {
    axes: [],
    pictures: [],
    problems: [],
    next: () => new Promise((done) => (came.length > 0 ? done(came.shift()!) : waiting.push(done))),
  };
  const client = open(picture, {
    picture: (blurred, options) => {
      watched.axes.push(options.refraction.axis);
      watched.pictures.push(blurred);
      take(blurred);
    },
    problem: (error) => {
      watched.problems.push(error);
      take(error);
    },
  });
  return { client, ...watched };
}

/** How many bytes differ from what the core makes of it in one go; −1 when it is no picture. */
export function apart(came: Picture | Error, picture: Picture, options: BlurOptions): number {
  if (!('data' in came)) return -1;
  const { data } = blur(picture, options);
  return came.data.length === data.length ? data.reduce((count, byte, i) => count + (byte === came.data[i] ? 0 : 1), 0) : -1;
}

export const pause = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));

/** A page of its own inside the test's, where the library is loaded anew. */
export interface Frame extends Window {
  blurPicture: typeof blurPicture;
  /** Offences against the page's policy, and what came to its console. */
  violations: string[];
  said: string[];
  Worker: typeof Worker;
}

declare global {
  interface Window {
    /** What is to be changed in a frame before the library is loaded there. */
    prepareFrame?: (frame: Frame) => void;
  }
}

/** @param policy content security policy of the frame. */
export async function framed({ policy = '', prepare }: { policy?: string; prepare?: (frame: Frame) => void } = {}): Promise<Frame> {
  window.prepareFrame = prepare;
  const frame = document.createElement('iframe');
  // In a page without an address of its own, Firefox takes 'self' for nobody.
  const said = policy.replaceAll("'self'", location.origin);
  frame.srcdoc = `<meta http-equiv="Content-Security-Policy" content="${said}"><script type="module" src="/test/components/blur-page.ts"></script>`;
  const ready = new Promise<void>((done) => window.addEventListener('frame-ready', () => done(), { once: true }));
  document.body.append(frame);
  await ready;
  return frame.contentWindow as unknown as Frame;
}

export function closeFrames(): void {
  for (const frame of document.querySelectorAll('iframe')) frame.remove();
}

/** A page's `Worker` that does as told instead of working. */
export function idleWorker(act: (worker: EventTarget & { onerror?: ((event: Event) => void) | null }) => void): typeof Worker {
  class IdleWorker extends EventTarget {
    onerror: ((event: Event) => void) | null = null;
    constructor() {
      super();
      act(this);
    }
    postMessage(): void {}
    terminate(): void {}
  }
  return IdleWorker as unknown as typeof Worker;
}

/** Lets a page's real `Worker` be counted and reached. */
export function countWorkers(page: { Worker: typeof Worker }): { made: Worker[]; ended: number } {
  const count = { made: [] as Worker[], ended: 0 };
  page.Worker = class extends page.Worker {
    constructor(url: string | URL, options?: WorkerOptions) {
      super(url, options);
      count.made.push(this);
    }
    override terminate(): void {
      count.ended += 1;
      super.terminate();
    }
  };
  return count;
}
