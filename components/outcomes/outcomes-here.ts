import { openDesk } from './outcomes.desk.js';
import type { FromDesk, ToDesk } from './outcomes.messages.js';

/** In the page all else waits for the end of a turn. */
const TURN_MS = 6;

/** A desk in the page, for want of a worker. Imported on demand. */
export function openHere(take: (message: FromDesk) => void): (message: ToDesk) => void {
  return openDesk(TURN_MS, take);
}
