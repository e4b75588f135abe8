/**
 * Cornea and vector diagram by general-purpose chart libraries, as a developer would write them: the figures come from the
 * same core, each movement hands new points to the library and lets it draw without animation. They draw these two and
 * nothing else: no form, no summary, no sweep, no list of plans; so what they leave out is in their favour.
 */
import { createRequire } from 'node:module';
import { bundle, hostPage, root } from './page.mjs';

const resolve = createRequire(import.meta.url).resolve;

/** What all have in common: the series of both diagrams for an incision at a site, and the handle. */
const COMMON = `
  import { ellipse, evaluatePlan, toVector } from './core/index.ts';
  const PLAN = { eye: 'right', flatK: 42.5, steepK: 44.25, steepMeridian: 180, age: 70, backSurface: 'typical', incisionWidth: 2.75, arcSite: 0, arcLength: 45, arcCount: 2, arcDepth: 500 };
  const at = (degrees, radius) => [radius * Math.cos((degrees * Math.PI) / 180), radius * Math.sin((degrees * Math.PI) / 180)];
  const bow = (from, to, radius, points = 60) => Array.from({ length: points + 1 }, (_, i) => at(from + ((to - from) * i) / points, radius));
  const petals = ({ magnitude, meridian }) => Array.from({ length: 73 }, (_, i) => at(5 * i, 1.5 * magnitude * Math.cos(((5 * i - meridian) * Math.PI) / 180) ** 2));
  const oval = ({ cx, cy, a, b, angle }) => Array.from({ length: 61 }, (_, i) => {
    const [x, y] = [a * Math.cos((i * Math.PI) / 30), b * Math.sin((i * Math.PI) / 30)];
    const [c, s] = at(angle, 1);
    return [cx + x * c - y * s, cy + x * s + y * c];
  });
  const cross = ({ meridian }, radius) => [at(meridian, radius), at(meridian + 180, radius)];
  export function series(site) {
    const { before, steps, after, spread } = evaluatePlan({ ...PLAN, incisionSite: site });
    let tail = toVector(before);
    const arrows = [[[0, 0], [tail.x, tail.y]]];
    for (const { vector } of steps) {
      const tip = { x: tail.x + vector.x, y: tail.y + vector.y };
      arrows.push([[tail.x, tail.y], [tip.x, tip.y]]);
      tail = tip;
    }
    return {
      cornea: [bow(0, 360, 5.85), bow(0, 360, 7.2), cross(before, 5.85), cross({ meridian: before.meridian + 90 }, 5.85), petals(before), petals(after), cross(after, 5.2), bow(site - 13, site + 13, 5.85, 12), bow(-22.5, 22.5, 5.5), bow(157.5, 202.5, 5.5)],
      vectors: [bow(0, 360, 0.5), bow(0, 360, 1), bow(0, 360, 1.5), ...arrows, [[0, 0], [tail.x, tail.y]], oval(ellipse(spread, 0.5)), oval(ellipse(spread, 0.95))],
    };
  }
  const count = { moves: 0 };
  export function start(show) {
    const [drawing, handle] = [document.querySelector('#cornea'), document.querySelector('#handle')];
    const place = (site) => {
      const [x, y] = at(site, 44);
      handle.style.transform = 'translate(' + (2 * x + 200 - 12) + 'px,' + (-2 * y + 200 - 12) + 'px)';
    };
    let held = false;
    handle.addEventListener('pointerdown', (event) => ((held = true), handle.setPointerCapture(event.pointerId), event.preventDefault()));
    handle.addEventListener('pointerup', () => (held = false));
    handle.addEventListener('pointermove', (event) => {
      if (!held) return;
      const { left, top, width, height } = drawing.getBoundingClientRect();
      const site = (((Math.atan2(top + height / 2 - event.clientY, event.clientX - left - width / 2) * 180) / Math.PI) + 360) % 360;
      count.moves += 1;
      place(site);
      show(series(site));
    });
    place(20);
    globalThis.bench = { drawing, handle, count };
    return series(20);
  }`;

const DRAW = {
  'chart.js': `
    import Chart from 'chart.js/auto';
    const make = (id, lines, max) => new Chart(document.querySelector('#' + id + ' canvas'), {
      type: 'scatter',
      data: { datasets: lines.map((data) => ({ data: points(data), showLine: true, pointRadius: 0, borderWidth: 1.5 })) },
      options: { animation: false, responsive: false, scales: { x: { min: -max, max }, y: { min: -max, max } }, plugins: { legend: { display: false } } },
    });
    const points = (line) => line.map(([x, y]) => ({ x, y }));
    let charts;
    const first = start((now) => {
      for (const id of ['cornea', 'vectors']) {
        now[id].forEach((line, i) => (charts[id].data.datasets[i].data = points(line)));
        charts[id].update('none');
      }
    });
    charts = { cornea: make('cornea', first.cornea, 8), vectors: make('vectors', first.vectors, 2) };`,
  echarts: `
    import * as echarts from 'echarts';
    const option = (lines, max) => ({ animation: false, xAxis: { min: -max, max }, yAxis: { min: -max, max }, series: lines.map((data) => ({ type: 'line', data, showSymbol: false })) });
    const charts = Object.fromEntries(['cornea', 'vectors'].map((id) => [id, echarts.init(document.querySelector('#' + id), null, { renderer: 'svg', width: 400, height: 400 })]));
    const show = (now) => {
      for (const id of ['cornea', 'vectors']) charts[id].setOption({ series: now[id].map((data) => ({ data })) });
    };
    const first = start(show);
    charts.cornea.setOption(option(first.cornea, 8));
    charts.vectors.setOption(option(first.vectors, 2));`,
};

/** Pages by name of the library; those that are not installed are named and left out. */
export async function chartPages() {
  const pages = {};
  const missing = [];
  for (const [name, draw] of Object.entries(DRAW)) {
    try {
      resolve(name);
    } catch {
      missing.push(name);
      continue;
    }
    const file = `/${name.replace('.', '')}`;
    pages[`${file}.js`] = await bundle({ stdin: { contents: `${COMMON}\n${draw}`, resolveDir: root, loader: 'js' } });
    pages[`${file}.html`] = hostPage({ body: BODY, source: `${file}.js` });
  }
  return { pages, names: Object.keys(pages).filter((path) => path.endsWith('.html')).map((path) => path.slice(1, -5)), missing };
}

const BODY = `<div class="columns">
  <div style="position: relative; width: 400px; height: 400px"><div id="cornea" style="width: 400px; height: 400px"><canvas width="400" height="400"></canvas></div>
  <div id="handle" style="position: absolute; left: 0; top: 0; width: 24px; height: 24px; background: #0072b2; border-radius: 12px; touch-action: none"></div></div>
  <div id="vectors" style="width: 400px; height: 400px"><canvas width="400" height="400"></canvas></div></div>`;
