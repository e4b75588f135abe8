import { listen } from '../internal/worker/listen.js';
import type { Ask, FromDesk, Reply, ToDesk } from './outcomes.messages.js';
import { startWorker } from './start-worker.js';

/** Once a worker has been refused, this page does without: a policy would only be offended again. */
let denied = false;

interface Asked {
  ask: Ask;
  resolve: (reply: Reply) => void;
  reject: (error: Error) => void;
  progress?: ((share: number) => void) | undefined;
}

/** The page's side of the desk that reads tables: in a worker, or where none is allowed, in the page by slices. */
export class DeskClient {
  #worker: Worker | null = null;
  #send: ((message: ToDesk) => void) | null = null;
  #closed = false;
  #count = 0;
  #asked = new Map<number, Asked>();
  /** What was read last, to be read again if the worker is lost. */
  #read: Ask | null = null;

  constructor() {
    if (!denied) this.#openWorker();
    if (!this.#worker) void this.#openHere();
  }

  /** Whether it works in the page. */
  get here(): boolean {
    return this.#worker === null;
  }

  ask(ask: Ask, progress?: (share: number) => void): Promise<Reply> {
    const number = (this.#count += 1);
    return new Promise((resolve, reject) => {
      this.#asked.set(number, { ask, resolve, reject, progress });
      this.#send?.({ number, ask });
    });
  }

  /** Ends all that is asked; what was read before stays. */
  cancel(): void {
    this.#drop();
    this.#send?.({ cancel: this.#count });
  }

  close(): void {
    this.#closed = true;
    this.#drop();
    this.#worker?.terminate();
  }

  #drop(): void {
    const dropped = [...this.#asked.values()];
    this.#asked.clear();
    for (const { reject } of dropped) reject(new Error('cancelled'));
  }

  readonly #take = (message: FromDesk): void => {
    if ('started' in message) return;
    const asked = this.#asked.get(message.number);
    if (!asked || this.#closed) return;
    if ('share' in message) return asked.progress?.(message.share);
    this.#asked.delete(message.number);
    if ('problem' in message) return asked.reject(new Error(message.problem));
    if (asked.ask.kind === 'read') this.#read = asked.ask;
    asked.resolve(message.reply);
  };

  #openWorker(): void {
    try {
      const worker = startWorker();
      this.#worker = worker;
      listen<FromDesk>(worker, this.#take, () => this.#fail());
      this.#send = (message) => worker.postMessage(message);
    } catch {
      denied = true;
    }
  }

  #fail(): void {
    if (this.#closed || !this.#worker) return;
    denied = true;
    this.#worker.terminate();
    this.#worker = null;
    this.#send = null;
    void this.#openHere();
  }

  async #openHere(): Promise<void> {
    try {
      const { openHere } = await import('./outcomes-here.js');
      if (this.#closed) return;
      const send = openHere(this.#take);
      this.#send = send;
      if (this.#read) send({ number: 0, ask: this.#read });
      for (const [number, { ask }] of this.#asked) send({ number, ask });
    } catch (error) {
      for (const { reject } of this.#asked.values()) reject(error as Error);
      this.#asked.clear();
    }
  }
}
