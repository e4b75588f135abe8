import { RefusedValue } from '../../../core/check.js';
import type { BlurOptions, Picture } from '../../../core/sight.js';
import { openInWorker } from './blur-link.js';
import type { BlurAnswer, BlurRequest, Problem, Seat } from './blur-messages.js';

/** What becomes of the requests of one client. Neither is called before `show` has returned, or after `dispose`. */
export interface BlurListener {
  /**
   * A new picture, and a copy of the options that it was made with. While options change fast these are newer ones each
   * time, and the newest in the end. The pixels may be kept until the next picture has come; then they are taken back,
   * and `data` is empty.
   */
  picture(blurred: Picture, options: BlurOptions): void;
  /** The newest options or the picture were refused (`RefusedValue`: field, value and limits), or nothing could be calculated. */
  problem(error: Error): void;
}

export interface BlurClient {
  /**
   * Asks for the picture blurred by `options`, which are copied. A later request takes the place of one that waits.
   * @throws DataCloneError when an option is a function or the like.
   */
  show(options: BlurOptions): void;
  /** Ends all; may be called at any time, and more than once. */
  dispose(): void;
}

/**
 * Keeps `picture` blurred by the newest options. Newest request wins, no queue; a listener is never called after dispose.
 *
 * The work is done in a worker that all clients of the page share, or where none is allowed, in the page by slices of
 * about 4 ms.
 * @param picture up to 2048 × 2048. It stays the caller's and must not be changed before `dispose`.
 */
export function blurPicture(picture: Picture, listener: BlurListener): BlurClient {
  return new Client(picture, listener);
}

class Client implements BlurClient {
  #seat: Seat | null = null;
  #count = 0;
  /** Until it is answered. */
  #newest: BlurRequest | null = null;
  #disposed = false;

  constructor(
    private readonly picture: Picture,
    private readonly listener: BlurListener,
  ) {
    // A faulty picture stays here, where the core says what is wrong with it.
    if (isWhole(picture)) this.#seat = openInWorker(picture, { answer: this.#answer, lost: this.#moveHere });
    this.#seat ??= new SeatHere(picture, this.#answer);
  }

  show(options: BlurOptions): void {
    if (this.#disposed) return;
    const copy = structuredClone(options);
    this.#newest = { number: (this.#count += 1), options: copy };
    this.#seat?.show(this.#newest);
  }

  dispose(): void {
    this.#disposed = true;
    this.#newest = null;
    this.#seat?.close();
    this.#seat = null;
  }

  readonly #answer = ({ number, options, picture, problem }: BlurAnswer): void => {
    if (this.#disposed) return;
    if (number === this.#newest?.number) this.#newest = null;
    if (picture) this.listener.picture(picture, options);
    // What was wrong with earlier options is of no interest while newer ones wait.
    else if (problem && !this.#newest) this.listener.problem(errorOf(problem));
  };

  readonly #moveHere = (): void => {
    this.#seat = new SeatHere(this.picture, this.#answer);
    if (this.#newest) this.#seat.show(this.#newest);
  };
}

/** A seat in the page. What it needs is loaded on the first request, and asked for anew by the next if that fails. */
class SeatHere implements Seat {
  #newest: BlurRequest | null = null;
  #seat: Seat | null = null;
  #closed = false;

  constructor(
    private readonly picture: Picture,
    private readonly answer: (answer: BlurAnswer) => void,
  ) {}

  show(request: BlurRequest): void {
    this.#newest = request;
    if (this.#seat) this.#seat.show(request);
    else void this.#open(request);
  }

  close(): void {
    this.#closed = true;
    this.#seat?.close();
  }

  async #open(request: BlurRequest): Promise<void> {
    try {
      const { openHere } = await import('./blur-here.js');
      if (this.#closed || this.#newest !== request) return;
      this.#seat ??= openHere(this.picture, this.answer);
      this.#seat.show(request);
    } catch (error) {
      if (!this.#closed && this.#newest === request) this.answer({ ...request, problem: { message: (error as Error).message } });
    }
  }
}

/** Whether a picture can be sent; what it should be is for the core to say. */
function isWhole(picture: Picture): boolean {
  const { data, width, height } = picture ?? {};
  return data instanceof Uint8ClampedArray && data.length > 0 && data.length <= LARGEST && data.length === 4 * width * height;
}

/** Bytes of 2048 × 2048 pixels: the core refuses more. */
const LARGEST = 4 * 2048 * 2048;

function errorOf({ message, refused }: Problem): Error {
  return refused ? Object.assign(new RefusedValue(refused.field, refused.value, refused.limits), refused) : new Error(message);
}
