import { ownWorker } from '../worker/own-worker.js';
import type { WorkerMaker } from '../worker/own-worker.js';

/**
 * The worker of the blur.
 * @throws whatever the browser throws where a page may have no worker.
 */
export function startWorker(): Worker {
  return construct(ownWorker());
}

function construct(Worker: WorkerMaker): Worker {
  return new Worker(new URL('./blur-worker.js', import.meta.url), { type: 'module' });
}
