/** What page and worker say to each other; types alone. */
import type { RefusedValue } from '../../../core/check.js';
import type { BlurOptions, Picture } from '../../../core/sight.js';

/** What one client asks for; its requests are numbered upwards. */
export interface BlurRequest {
  number: number;
  options: BlurOptions;
}

/** A picture or a problem, never both. */
export interface BlurAnswer extends BlurRequest {
  picture?: Picture;
  problem?: Problem;
}

/** An error in parts that survive the way out of a worker. */
export interface Problem {
  message: string;
  /** Fields of a refused value. */
  refused?: Pick<RefusedValue, 'field' | 'value' | 'limits'>;
}

/**
 * A picture comes in pieces, for a large one is not copied in a moment. What was a blurred picture comes back as a spare:
 * to sweep up sixty a second held the page for 10 ms now and then.
 */
export type ToWorker =
  | { kind: 'open'; client: number; width: number; height: number }
  | { kind: 'piece'; client: number; start: number; bytes: Uint8ClampedArray<ArrayBuffer> }
  | { kind: 'show'; client: number; request: BlurRequest }
  | { kind: 'spare'; client: number; bytes: Uint8ClampedArray }
  | { kind: 'close'; client: number };

export type FromWorker = { kind: 'started' } | { kind: 'answer'; client: number; answer: BlurAnswer };

/** Where the requests of one client are worked on: in the worker, or in the page. */
export interface Seat {
  show(request: BlurRequest): void;
  close(): void;
}
