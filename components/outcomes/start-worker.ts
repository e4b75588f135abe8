import { ownWorker } from '../internal/worker/own-worker.js';
import type { WorkerMaker } from '../internal/worker/own-worker.js';

/**
 * The worker that reads tables.
 * @throws whatever the browser throws where a page may have no worker.
 */
export function startWorker(): Worker {
  return construct(ownWorker());
}

function construct(Worker: WorkerMaker): Worker {
  return new Worker(new URL('./outcomes-worker.js', import.meta.url), { type: 'module' });
}
