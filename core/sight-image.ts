import { checkedLook, fillFactors, finish, prepare, turnBack, type BlurOptions, type Look, type Prepared } from './sight-render.js';
import { channelsOf, checkedPicture, type Picture, type Size } from './sight-picture.js';
import { quickTransfer, type Transfer } from './sight-transfer.js';

/**
 * A picture as an eye with an error in focus sees it, again and again with new errors.
 *
 * The picture is taken as light (sRGB decoded) and carried over once into frequencies; each new error then costs a
 * product and one transform back for each channel. Beyond its edges the picture goes on with its outermost pixels. The
 * sum of the light is kept, before it is written in whole bytes again. Alpha is left out of account and comes back as
 * 255, so a transparent picture should be painted on its ground first.
 *
 * One wavelength stands for all colours, the retina and the brain are left out, and so are aberrations of higher orders.
 */
export class Blurrer {
  readonly #picture: Picture;
  readonly #channels: readonly number[];
  #prepared: Prepared | undefined;
  #run = 0;

  /**
   * @param picture up to 2048 × 2048; its pixels are copied.
   * @throws RangeError when sizes and data do not match.
   */
  constructor(picture: Picture) {
    const { data, width, height } = checkedPicture(picture);
    this.#picture = { data: data.slice(), width, height };
    this.#channels = channelsOf(picture);
  }

  /**
   * The blurred picture, in one go.
   * @throws RangeError when an option is out of range, or the blur so wide that light strays by more than 1024 px.
   */
  blur(options: BlurOptions): Picture {
    const steps = this.steps(options);
    for (;;) {
      const { done, value } = steps.next();
      if (done) return value!;
    }
  }

  /**
   * The same in slices: a call of `next` does at most about 3 ms of work. Of pictures of more than a million pixels a few
   * of the first slices take longer, for their memory alone. The last returns the picture, or null when another blur of
   * the same picture was begun meanwhile. Options are checked at once, before the first slice.
   * @throws RangeError as `blur`.
   */
  steps(options: BlurOptions): Generator<void, Picture | null> {
    const run = (this.#run += 1);
    return this.#slices(this.#work(quickTransfer(options), checkedLook(options, this.#picture)), () => run === this.#run);
  }

  /** Asks before each slice, for blurs of one picture share their workplace. */
  *#slices(work: Generator<void, Picture>, still: () => boolean): Generator<void, Picture | null> {
    while (still()) {
      const { done, value } = work.next();
      if (done) return value;
      yield;
    }
    return null;
  }

  *#work(transfer: Transfer, look: Look): Generator<void, Picture> {
    const prepared = this.#fits(look.size) ?? (yield* prepare(this.#picture, this.#channels, look));
    this.#prepared = prepared;
    yield* fillFactors(prepared, transfer, look);
    const data = new Uint8ClampedArray(this.#picture.data.length);
    for (const [index, channel] of this.#channels.entries()) {
      yield* turnBack(prepared, prepared.spectra[index]!, this.#picture, data, channel);
    }
    finish(data, this.#channels.length === 1);
    return { data, width: this.#picture.width, height: this.#picture.height };
  }

  #fits({ width, height }: Size): Prepared | undefined {
    const grid = this.#prepared?.grid;
    return grid?.width === width && grid.height === height ? this.#prepared : undefined;
  }
}

/** One picture with one error. Whoever wants more of the same picture keeps a `Blurrer`. */
export function blur(picture: Picture, options: BlurOptions): Picture {
  return new Blurrer(picture).blur(options);
}

/** `blur` in slices of a few milliseconds, for a page that has to stay alive; see `Blurrer.steps`. */
export function blurSteps(picture: Picture, options: BlurOptions): Generator<void, Picture | null> {
  return new Blurrer(picture).steps(options);
}
