/** The script of the worker. The build makes it self-contained, for a bundler may take it for a mere asset and copy it. */
import { openDesk } from './outcomes.desk.js';
import type { FromDesk, ToDesk } from './outcomes.messages.js';

/** In the worker only messages wait for the end of a turn. */
const TURN_MS = 30;

/** What of a worker's global scope is used; the project is compiled against the types of a page. */
interface WorkerScope {
  postMessage(message: FromDesk, transfer?: Transferable[]): void;
  onmessage: ((event: MessageEvent<ToDesk>) => void) | null;
}

const scope = globalThis as unknown as WorkerScope;
const desk = openDesk(TURN_MS, (message, transfer) => scope.postMessage(message, transfer ?? []));
scope.onmessage = ({ data }) => desk(data);
scope.postMessage({ started: true });
