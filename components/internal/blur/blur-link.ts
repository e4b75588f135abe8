import type { Picture } from '../../../core/sight.js';
import { listen } from '../worker/listen.js';
import type { BlurAnswer, FromWorker, Seat, ToWorker } from './blur-messages.js';
import { nextTask } from '../worker/next-task.js';
import { startWorker } from './start-worker.js';

/** Bytes that are copied and sent in one task: well below a millisecond. */
const PIECE = 2 ** 20;

/** ms for which the worker is kept when nobody is left, for an element that only moves within its page comes back at once. */
const LINGER = 1000;

interface Client {
  /** The newest picture, until there is a newer one. */
  shown?: Picture;
  answer: (answer: BlurAnswer) => void;
  /** The worker is gone; what it owes has to be had elsewhere. */
  lost: () => void;
}

/** The one worker of the page and those who use it. */
class Link {
  readonly #worker = startWorker();
  readonly #clients = new Map<number, Client>();
  #over = false;
  #count = 0;

  constructor() {
    listen<FromWorker>(this.#worker, (message) => {
      if (message.kind === 'answer') this.#deliver(message.client, message.answer);
    }, () => this.#fail());
  }

  open(picture: Picture, client: Client): Seat {
    const id = (this.#count += 1);
    this.#clients.set(id, client);
    this.#send({ kind: 'open', client: id, width: picture.width, height: picture.height });
    this.#sendPieces(id, picture, 0);
    return {
      show: (request) => this.#send({ kind: 'show', client: id, request }),
      close: () => this.#close(id),
    };
  }

  #sendPieces(client: number, picture: Picture, start: number): void {
    if (!this.#clients.has(client)) return;
    const end = start + PIECE;
    const bytes = new Uint8ClampedArray(picture.data.subarray(start, end));
    this.#send({ kind: 'piece', client, start, bytes }, [bytes.buffer]);
    if (end < picture.data.length) nextTask(() => this.#sendPieces(client, picture, end));
  }

  #deliver(id: number, answer: BlurAnswer): void {
    const client = this.#clients.get(id);
    client?.answer(answer);
    // Who was disposed of meanwhile keeps the last picture.
    if (!client || !answer.picture || !this.#clients.has(id)) return;
    const bytes = client.shown?.data;
    client.shown = answer.picture;
    if (bytes?.length) this.#send({ kind: 'spare', client: id, bytes }, [bytes.buffer]);
  }

  #send(message: ToWorker, transfer: Transferable[] = []): void {
    this.#worker.postMessage(message, transfer);
  }

  #close(id: number): void {
    if (!this.#clients.delete(id)) return;
    this.#send({ kind: 'close', client: id });
    if (this.#clients.size === 0) setTimeout(() => this.#endIfIdle(), LINGER);
  }

  #endIfIdle(): void {
    if (this.#clients.size === 0) this.#end();
  }

  #end(): void {
    this.#over = true;
    this.#worker.terminate();
    if (link === this) link = null;
  }

  #fail(): void {
    if (this.#over) return;
    denied = true;
    this.#end();
    const left = [...this.#clients.values()];
    this.#clients.clear();
    for (const { lost } of left) lost();
  }
}

let link: Link | null = null;

/** Once no worker may be started, or one has failed, this page does without: a policy would only be offended again. */
let denied = false;

/** A seat in the worker, or null where there is none to be had. */
export function openInWorker(picture: Picture, client: Client): Seat | null {
  return linked()?.open(picture, client) ?? null;
}

function linked(): Link | null {
  if (denied) return null;
  try {
    link ??= new Link();
  } catch {
    denied = true;
  }
  return link;
}
