/**
 * A real drag of the incision on the page of the main job: mouse events by DevTools, 120 a second, and what each one that
 * reached the page cost the main thread by the browser's own metrics. The browser joins most of the events that fall
 * between two frames, but not all: on a slow machine several reach the page before it is drawn once.
 */
import { chartPages } from './charts.mjs';
import { assertSame, floorPage, libraryPage, recordFloor } from './floor.mjs';
import { PAIR, bundle, medians, openBrowser, openPage, pause, serve } from './page.mjs';
import { traceSummary } from './trace.mjs';

export const title = 'Drag of the incision, ms of main thread an event (CPU time); beside: the floor, which writes the same DOM and calculates nothing';

const EVENTS = 300;
const PER_SECOND = 120;
const RUNS = 3;
/**
 * A slower hand, of which every page paints every movement. At 120 a second a page that is slowed down paints some only,
 * and the less of them the longer it is kept by events: the floor, which has a layout for each, paints a third as often as
 * the library, and what it spares by that is no merit.
 */
const SLOW_HAND = { events: 60, perSecond: 12 };

const SLOWDOWNS = [1, 6];

/** Most that an event may cost on a desktop machine, and the length of a frame, ms. */
const GOAL = { event: 8, frame: 16 };

/** By name in `Performance.getMetrics`. Its script leaves out microtasks, in which Lit renders: that comes from the trace. */
const METRICS = { task: 'TaskDuration', style: 'RecalcStyleDuration', layout: 'LayoutDuration', listeners: 'ScriptDuration' };

/** By kind in the trace. */
const TRACED = ['script', 'collection', 'paint', 'raster', 'layouts'];

/**
 * Who takes part: the library with all that follows a plan, its floor, and, with the cornea and the vectors alone, the
 * library once more and general-purpose chart libraries.
 */
async function contenders(browser) {
  const library = libraryPage();
  const source = { '/library.html': library, '/library.js': await bundle() };
  const server = await serve(source);
  const { page } = await openPage(browser, server.url('/library.html'));
  const recording = await recordFloor(page);
  await page.close();
  server.close();
  const charts = await chartPages();
  for (const name of charts.missing) console.error(`${name} is not installed and takes no part.`);
  return { recording, pages: { ...source, ...charts.pages, '/pair.html': libraryPage(PAIR), '/floor.html': await floorPage(recording) }, names: ['library', 'floor', 'pair', ...charts.names] };
}

export async function run() {
  const browser = await openBrowser();
  try {
    const { recording, pages, names } = await contenders(browser);
    const server = await serve(pages);
    await checkFloor(browser, server, recording);
    const rows = [];
    for (const slowdown of SLOWDOWNS) {
      const results = await race(browser, server, names, slowdown);
      rows.push(...table(results, slowdown));
    }
    server.close();
    return rows;
  } finally {
    await browser.close();
  }
}

async function checkFloor(browser, server, recording) {
  const { page } = await openPage(browser, server.url('/floor.html'));
  await assertSame(page, recording);
  await page.close();
}

/** The contenders take turns, so that whatever else the machine does falls on all of them. */
async function race(browser, server, names, slowdown) {
  const runs = Object.fromEntries(names.map((name) => [name, []]));
  for (let round = 0; round < RUNS; round += 1) {
    for (const name of names) runs[name].push(await measure(browser, server.url(`/${name}.html`), slowdown));
  }
  return Object.fromEntries(names.map((name) => [name, medians(runs[name])]));
}

async function measure(browser, url, slowdown) {
  const { page, cdp } = await openPage(browser, url);
  await page.bringToFront();
  await cdp.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
  // The time of the thread, not of the wall, so that other processes do not count.
  await cdp.send('Performance.enable', { timeDomain: 'threadTicks' });
  const first = await traceSummary(page, () => drag(page, cdp));
  const before = await state(page, cdp);
  await drag(page, cdp);
  const after = await state(page, cdp);
  const traced = await traceSummary(page, () => drag(page, cdp));
  const beforeSlow = await state(page, cdp);
  await drag(page, cdp, SLOW_HAND);
  const slow = perMove(beforeSlow, await state(page, cdp));
  await page.close();
  const { moves, ...each } = perMove(before, after);
  const shares = Object.fromEntries(TRACED.map((key) => [key, traced[key] / traced.moves]));
  return { moves, ...each, ...shares, frames: traced.frames, longest: traced.longest, longestFirst: first.longest, overFrame: traced.over(GOAL.frame), slowTask: slow.task, slowMoves: slow.moves };
}

function perMove(before, after) {
  const moves = after.moves - before.moves;
  return { moves, ...Object.fromEntries(Object.keys(METRICS).map((key) => [key, (1000 * (after[key] - before[key])) / moves])) };
}

async function state(page, cdp) {
  const moves = await page.evaluate(() => globalThis.bench.count.moves);
  const { metrics } = await cdp.send('Performance.getMetrics');
  const read = (name) => metrics.find((metric) => metric.name === name).value;
  return { moves, ...Object.fromEntries(Object.entries(METRICS).map(([key, name]) => [key, read(name)])) };
}

/** Presses on the handle, turns it by a degree an event through the upper half of the eye and back, and lets go. */
export async function drag(page, cdp, { events = EVENTS, perSecond = PER_SECOND } = {}) {
  const { x, y, radius, from } = await page.evaluate(grip);
  const mouse = (type, degrees, buttons) => {
    const angle = (degrees * Math.PI) / 180;
    const position = { x: x + radius * Math.cos(angle), y: y - radius * Math.sin(angle) };
    return cdp.send('Input.dispatchMouseEvent', { type, ...position, button: type === 'mouseMoved' && !buttons ? 'none' : 'left', buttons, clickCount: 1 });
  };
  await mouse('mouseMoved', from, 0);
  await mouse('mousePressed', from, 1);
  const sent = [];
  const start = performance.now();
  for (let index = 1; index <= events; index += 1) {
    await pause(start + (1000 * index) / perSecond - performance.now());
    const turned = index % events <= events / 2 ? index % events : events - (index % events);
    sent.push(mouse('mouseMoved', from + turned, 1));
  }
  await Promise.all(sent);
  await mouse('mouseReleased', from, 0);
  // Scales that glide are still on their way.
  await pause(400);
}

/** Runs in the page: where the drawing has its centre and the handle its place, in px of the window. */
function grip() {
  const { drawing, handle } = globalThis.bench;
  const middle = (element) => {
    const { left, top, width, height } = element.getBoundingClientRect();
    return { x: left + width / 2, y: top + height / 2 };
  };
  const centre = middle(drawing);
  const knob = middle(handle);
  const [across, up] = [knob.x - centre.x, centre.y - knob.y];
  return { ...centre, radius: Math.hypot(across, up), from: (Math.atan2(up, across) * 180) / Math.PI };
}

function table({ floor, ...others }, slowdown) {
  const where = slowdown === 1 ? 'this machine' : `slowed down ${slowdown}×`;
  const { library, pair, ...charts } = others;
  const beside = (what, ours, goal) => Object.entries(charts).map(([name, chart]) => ({ what: `${what}, ${where}: all tasks; beside: ${name}, cornea and vectors alone`, value: ours.task, beside: chart.task, ratio: ours.task / chart.task, goal }));
  const floorRow = (what, key) => ({ what: `library, ${where}, ${what}: all tasks; goal of the ratio to the floor`, value: library[key], beside: floor[key], ratio: library[key] / floor[key], goal: 1.5 });
  return [floorRow('every movement painted', 'slowTask'), floorRow(`${PER_SECOND} movements a second`, 'task'), ...beside('library, cornea and vectors alone', pair, 1), ...beside('library, with form, summary, curve and list of plans', library), ...detailed({ library, pair, ...charts }, floor, where, slowdown)];
}

function detailed(others, floor, where, slowdown) {
  return Object.entries(others).flatMap(([name, result]) => {
    const row = (figure, key, goal) => ({ what: `${name}, ${where}: ${figure}`, value: result[key], beside: floor[key], ratio: result[key] / floor[key], goal });
    return [
      row('all tasks', 'task', name === 'library' && slowdown === 1 ? GOAL.event : null),
      row('script in listeners', 'listeners'),
      row('script with microtasks (trace)', 'script'),
      row('garbage collection (trace)', 'collection'),
      row('style', 'style'),
      row('layout', 'layout'),
      row('layouts an event (trace), number', 'layouts'),
      row('paint on the main thread (trace)', 'paint'),
      row('raster on other threads (trace)', 'raster'),
      row('longest task of the third drag', 'longest', slowdown === 1 ? GOAL.frame : null),
      row('longest task of the first drag', 'longestFirst', slowdown === 1 ? GOAL.frame : null),
      row(`tasks over ${GOAL.frame} ms in the third drag, number`, 'overFrame', slowdown === 1 ? 0 : null),
      row('frames drawn a second (trace)', 'frames'),
      row(`events that reached the page, of ${EVENTS}`, 'moves'),
      row(`events of the slower hand that reached the page, of ${SLOW_HAND.events}`, 'slowMoves'),
    ];
  });
}
