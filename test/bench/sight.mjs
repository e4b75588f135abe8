/**
 * How fast pictures are blurred: whole new pictures, and the transform alone beside fft.js, ndarray-fft, mathjs and scipy.
 * Timed in a worker of the browser, where pages have it done.
 */
import { join } from 'node:path';
import { bundle, hostPage, openBrowser, openPage, root, serve } from './page.mjs';
import { byScipy } from './scipy.mjs';

export const title = 'Sight, in a worker, milliseconds';

const here = (file) => join(root, 'test/bench', file);

export async function run() {
  const server = await serve({
    '/worker.js': await bundle({ entryPoints: [here('sight-worker.mjs')], define: { global: 'globalThis' }, alias: { buffer: here('no-buffer.mjs') } }),
    '/page.html': hostPage({ body: '' }),
  });
  const browser = await openBrowser();
  try {
    const { page } = await openPage(browser, server.url('/page.html'));
    const { rows, ours } = await page.evaluate(answerOf, '/worker.js');
    return [...rows, besideScipy(ours)];
  } finally {
    await browser.close();
    server.close();
  }
}

/** Runs in the page. */
function answerOf(url) {
  const worker = new Worker(url, { type: 'module' });
  return new Promise((done, fail) => {
    worker.onmessage = ({ data }) => done(data);
    worker.onerror = ({ message }) => fail(new Error(message));
  });
}

function besideScipy({ what, value, side, at: [x, y], found }) {
  const { missing, time, real } = byScipy(side, [x, y]);
  if (missing) return { what: `${what}; beside: scipy, ${missing}`, value };
  if (!(Math.abs(real - found) < 1e-6)) throw new Error('scipy disagrees.');
  return { what: `${what}; beside: scipy (compiled code)`, value, beside: time, ratio: value / time };
}
