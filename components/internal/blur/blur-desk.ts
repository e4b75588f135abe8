import type { BlurJob } from './blur-job.js';
import { nextTask } from '../worker/next-task.js';

/** Lets several jobs work by turns, in one thread that has other things to do in between. */
export class BlurDesk {
  readonly #jobs = new Set<BlurJob>();
  #going = false;

  /** @param turn ms that a turn lasts. */
  constructor(private readonly turn: number) {}

  /** To be called whenever a job has got something to do. */
  wake(job: BlurJob): void {
    this.#jobs.add(job);
    if (this.#going || !job.busy) return;
    this.#going = true;
    nextTask(this.#take);
  }

  remove(job: BlurJob): void {
    this.#jobs.delete(job);
  }

  readonly #take = (): void => {
    const job = [...this.#jobs].find(({ busy }) => busy);
    this.#going = job !== undefined;
    if (!job) return;
    // To the end of the row.
    this.#jobs.delete(job);
    this.#jobs.add(job);
    const answer = job.work(this.turn);
    // Before the answer, for whoever takes it may fail.
    nextTask(this.#take);
    if (answer) job.answer(answer);
  };
}
