/** The script of the worker. The build makes it self-contained, for a bundler may take it for a mere asset and copy it. */
import type { Picture } from '../../../core/sight.js';
import { BlurDesk } from './blur-desk.js';
import { BlurJob } from './blur-job.js';
import type { BlurAnswer, FromWorker, ToWorker } from './blur-messages.js';

/** In the worker only messages wait for the end of a turn. */
const TURN_MS = 8;

/** What of a worker's global scope is used; the project is compiled against the types of a page. */
interface WorkerScope {
  postMessage(message: FromWorker, transfer?: Transferable[]): void;
  onmessage: ((event: MessageEvent<ToWorker>) => void) | null;
}

interface Client {
  job: BlurJob;
  picture: Picture;
  /** Bytes that have not come yet. */
  missing: number;
  /** What can be sent again. */
  spare: Uint8ClampedArray | null;
}

const scope = globalThis as unknown as WorkerScope;
const desk = new BlurDesk(TURN_MS);
const clients = new Map<number, Client>();

scope.onmessage = ({ data: message }) => {
  if (message.kind === 'open') return open(message.client, message.width, message.height);
  const client = clients.get(message.client);
  if (!client) return;
  if (message.kind === 'close') {
    clients.delete(message.client);
    return desk.remove(client.job);
  }
  if (message.kind === 'spare') client.spare = message.bytes;
  else if (message.kind === 'piece') take(client, message.start, message.bytes);
  else client.job.show(message.request);
  desk.wake(client.job);
};
scope.postMessage({ kind: 'started' });

function open(client: number, width: number, height: number): void {
  const picture = { data: new Uint8ClampedArray(4 * width * height), width, height };
  const job = new BlurJob(picture, (answer) => send(client, answer), false);
  clients.set(client, { job, picture, missing: picture.data.length, spare: null });
}

function send(id: number, answer: BlurAnswer): void {
  const client = clients.get(id);
  const { picture } = answer;
  if (client?.spare && picture) {
    client.spare.set(picture.data);
    picture.data = client.spare;
    client.spare = null;
  }
  scope.postMessage({ kind: 'answer', client: id, answer }, picture ? [picture.data.buffer] : []);
}

function take(client: Client, start: number, bytes: Uint8ClampedArray): void {
  client.picture.data.set(bytes, start);
  client.missing -= bytes.length;
  client.job.ready = client.missing === 0;
}
