/**
 * `npm run test:endurance`: 10 000 times into the page and out again, and an hour's worth of drags, in Chromium; then heap,
 * listeners and nodes must be what they were. `-- --cycles 500 --moves 3000` for less. Ends with 1 when something has grown.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { loadavg } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import puppeteer from 'puppeteer-core';
import { bundle, hostPage, openPage, root, serve } from '../bench/page.mjs';
import { findBrowser } from '../find-browser.mjs';
import { censusOf } from './census.mjs';

/** An hour of a hand that never rests, with a move in each frame of a usual screen. */
const HOUR = 60 * 60 * 60;

const { cycles, moves } = Object.fromEntries(
  Object.entries(parseArgs({ options: { cycles: { type: 'string', default: '10000' }, moves: { type: 'string', default: String(HOUR) } } }).values).map(([name, text]) => [name, Number(text)]),
);

/** What may be added: the engine keeps figures and lists on its own account, but not by the thousand. kB of what is made. */
const ALLOWED = { made: 50, nodes: 20, listeners: 10, detached: 20 };

/** Printed beside it, without a limit: what the engine compiles depends on what it finds worth it. kB. */
const TOLD = ['compiled', 'whole'];

const MARKUP = `<astig-case id="eye" eye="right" flat-k="42.5" steep-k="44.25" steep-meridian="180" age="70" back-surface="typical"
  incision-site="20" arc-site="0" arc-count="2" arc-depth="500" lens-cylinder="1" lens-meridian="170">
  ${['cornea', 'vectors', 'summary', 'entry', 'sweep', 'options', 'sight', 'explain', 'pencil', 'sheet', 'outcomes'].map((name) => `<astig-${name}></astig-${name}>`).join('')}
</astig-case><astig-vectors for="eye"></astig-vectors>
<astig-steps><astig-case steep-k="44"><astig-step></astig-step><astig-step incision-site="180" predict="What remains?"></astig-step><astig-vectors></astig-vectors></astig-case></astig-steps>`;

const server = await serve({ '/library.js': await bundle(), '/page.html': hostPage({ body: '<main></main>', source: '/library.js' }) });
const browser = await puppeteer.launch({
  executablePath: findBrowser(),
  headless: true,
  protocolTimeout: 3_600_000,
  // Frames as fast as they can be drawn: an hour of them would take an hour.
  args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--no-first-run', '--disable-frame-rate-limit', '--disable-gpu-vsync', '--js-flags=--expose-gc'],
  defaultViewport: { width: 1000, height: 1200 },
});

try {
  const results = { load: loadavg()[0], cycles: await measured('cycles', cycles, 1000, connect), drags: await measured('moves', moves, 2000, drag) };
  mkdirSync(join(root, 'test/out'), { recursive: true });
  writeFileSync(join(root, 'test/out/endurance.json'), `${JSON.stringify(results, null, 2)}\n`);
  const grown = [...results.cycles.grown, ...results.drags.grown];
  console.log(grown.length > 0 ? `Grown: ${grown.join('; ')}.` : 'Nothing has grown.');
  process.exitCode = grown.length > 0 ? 1 : 0;
} finally {
  await browser.close();
  server.close();
}

/** What `action` leaves behind when it is done `count` times, after a warm-up in which all that is loaded late has come. */
async function measured(what, count, warmUp, action) {
  const { page, cdp } = await openPage(browser, server.url('/page.html'));
  await cdp.send('Performance.enable');
  const start = performance.now();
  await page.evaluate(action, MARKUP, warmUp);
  const before = await censusOf(cdp, page);
  // In parts, so that growth is seen as a slope and not only as a difference.
  const course = [before];
  for (let part = 0; part < 4; part += 1) {
    await page.evaluate(action, MARKUP, Math.ceil(count / 4));
    course.push(await censusOf(cdp, page));
  }
  const after = course.at(-1);
  await page.evaluate(leak);
  const leaking = await censusOf(cdp, page);
  const unseen = Object.keys(ALLOWED).filter((key) => leaking[key] - after[key] <= ALLOWED[key]);
  if (unseen.length > 0) throw new Error(`Growth of ${unseen.join(', ')} would not be seen.`);
  await page.close();
  const grown = Object.keys(ALLOWED).filter((key) => after[key] - before[key] > ALLOWED[key]).map((key) => `${key} by ${(after[key] - before[key]).toFixed(0)} after ${count} ${what}`);
  const seconds = (performance.now() - start) / 1000;
  console.log(`${count} ${what} in ${seconds.toFixed(0)} s (load of the machine ${loadavg()[0].toFixed(1)})`);
  for (const key of [...Object.keys(ALLOWED), ...TOLD]) console.log(`  ${key.padEnd(10)}${course.map((one) => one[key].toFixed(0).padStart(9)).join('')}   ${key in ALLOWED ? `may grow by ${ALLOWED[key]}` : 'kB'}`);
  const more = Object.entries(after.names).map(([name, number]) => [name, number - (before.names[name] ?? 0)]).filter(([, number]) => number > 0);
  for (const [name, number] of more) console.log(`  detached   ${number} more: ${name}`);
  return { count, seconds, course, grown };
}

/** Runs in the page: what the census must see, for its silence to mean anything. */
function leak() {
  globalThis.leaking = Array.from({ length: 30 }, (_, index) => {
    const kept = document.createElement('p');
    kept.append(String(index));
    addEventListener('resize', () => kept.remove());
    return [kept, Array.from({ length: 1000 }, () => ({ index }))];
  });
}

/** Runs in the page: in and out, by turns the same elements and new ones; and the page is empty at the end. */
async function connect(markup, count) {
  const main = document.querySelector('main');
  const frame = () => new Promise(requestAnimationFrame);
  main.innerHTML = markup;
  const kept = [...main.children];
  for (let cycle = 0; cycle < count; cycle += 1) {
    if (cycle % 10 === 9) main.innerHTML = markup;
    else main.replaceChildren(...kept);
    // Sometimes they are gone before they were drawn.
    if (cycle % 3 > 0) await frame();
    main.replaceChildren();
  }
  for (let wait = 0; wait < 30; wait += 1) await frame();
}

/** Runs in the page: strokes of a minute, one move a frame, every fifth of them given up; and the page is empty at the end. */
async function drag(markup, count) {
  const main = document.querySelector('main');
  const frame = () => new Promise(requestAnimationFrame);
  main.innerHTML = markup;
  for (const view of main.querySelectorAll('*')) await view.updateComplete;
  for (let wait = 0; wait < 20; wait += 1) await frame();
  const svg = document.querySelector('astig-cornea').shadowRoot.querySelector('svg');
  let inputs = 0;
  // A listener that stayed would itself hold the drawing.
  const listening = new AbortController();
  main.addEventListener('astig-input', () => (inputs += 1), { signal: listening.signal });
  const send = (type, x, y) => svg.dispatchEvent(new PointerEvent(type, { pointerId: 1, pointerType: 'mouse', isPrimary: true, button: type === 'pointermove' ? -1 : 0, buttons: 1, clientX: x, clientY: y, bubbles: true, composed: true, cancelable: true }));
  let stroke = 0;
  for (let done = 0; done < count; stroke += 1) {
    const handles = svg.querySelectorAll('[part~="incision-handle"], [part~="arc-handle"], [part~="arc-end-handle"], [part~="lens-handle"]');
    const grip = handles[stroke % handles.length].getBoundingClientRect();
    const box = svg.getBoundingClientRect();
    const [x, y] = [grip.left + grip.width / 2, grip.top + grip.height / 2];
    send('pointerdown', x, y);
    for (let move = 0; move < 60 && done < count; move += 1, done += 1) {
      const angle = 0.11 * move + stroke;
      send('pointermove', box.left + box.width * (0.5 + 0.4 * Math.cos(angle)), box.top + box.height * (0.5 + 0.4 * Math.sin(angle)));
      await frame();
    }
    send(stroke % 5 === 4 ? 'pointercancel' : 'pointerup', x, y);
  }
  if (inputs < count / 4) throw new Error(`Of ${count} moves only ${inputs} moved anything.`);
  listening.abort();
  main.replaceChildren();
  for (let wait = 0; wait < 30; wait += 1) await frame();
}
