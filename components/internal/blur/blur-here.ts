import type { Picture } from '../../../core/sight.js';
import { BlurDesk } from './blur-desk.js';
import { BlurJob } from './blur-job.js';
import type { BlurAnswer, Seat } from './blur-messages.js';

/** In the page all else waits for the end of a turn. */
const TURN_MS = 4;

const desk = new BlurDesk(TURN_MS);

/** A seat in the page, for want of a worker. Imported on demand: nothing else in the page needs what blurs. */
export function openHere(picture: Picture, answer: (answer: BlurAnswer) => void): Seat {
  const job = new BlurJob(picture, answer);
  return {
    show: (request) => {
      job.show(request);
      desk.wake(job);
    },
    close: () => desk.remove(job),
  };
}
