const waiting: (() => void)[] = [];
let channel: MessageChannel | undefined;

/**
 * Runs something in a task of its own, so that input, messages and paint come in between. Timers would do, but browsers
 * hold them back: by 4 ms when one calls for the next, by a second in a page that nobody sees.
 */
export function nextTask(run: () => void): void {
  if (!channel) {
    channel = new MessageChannel();
    channel.port1.onmessage = () => waiting.shift()?.();
  }
  waiting.push(run);
  channel.port2.postMessage(null);
}
