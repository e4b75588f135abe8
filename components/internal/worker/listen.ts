/** A worker that has not said a word by then, in ms, will not work here. */
const START_WITHIN = 3000;

/** Waited for in several short waits, so that a page that is busy itself does not count as a worker that is dumb. */
const WAITS = 10;

/** Takes what a worker says. `onLost` is called where it fails, or has said nothing when it should have started. */
export function listen<Message>(worker: Worker, onMessage: (message: Message) => void, onLost: () => void): void {
  let started = false;
  const awaitStart = (waits: number): void => {
    if (started) return;
    if (waits === 0) onLost();
    else setTimeout(() => awaitStart(waits - 1), START_WITHIN / WAITS);
  };
  worker.onmessage = ({ data }: MessageEvent<Message>) => {
    started = true;
    onMessage(data);
  };
  worker.onmessageerror = onLost;
  worker.onerror = (event) => {
    // Else the browser writes to the console what is dealt with here.
    event.preventDefault();
    onLost();
  };
  awaitStart(WAITS);
}
