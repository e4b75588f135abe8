/** @type {Set<import('node:child_process').ChildProcess>} */
const running = new Set();

/** However this process ends, short of SIGKILL, what it started ends with it. */
process.on('exit', () => running.forEach((child) => child.kill()));
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.once(signal, () => process.exit(1));

/**
 * @template {import('node:child_process').ChildProcess} T
 * @param {T} child
 * @returns {T}
 */
export function endWithUs(child) {
  running.add(child);
  child.once('exit', () => running.delete(child));
  return child;
}
