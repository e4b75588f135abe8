/**
 * The floor: the same SVG and HTML under the same style sheets, written once as static markup, and for each whole degree
 * of the incision site exactly the attributes, texts and nodes that have to be different. The library itself is the
 * source of both, before anything is timed.
 *
 * What the floor leaves out: it calculates nothing, formats nothing, compares no templates, places no labels, checks no
 * limits, fires no events, knows one plan and one degree of freedom, and jumps where the library lets a scale glide.
 * What it does: it turns the pointer into a degree, compares known strings and writes the DOM. The browser's own work
 * (style, layout, paint) is the same on both sides; so no page that shows the same things can be much below it.
 */
import { fileURLToPath } from 'node:url';
import { CASE, bundle, hostPage } from './page.mjs';

/** Records the page of the library that is open in `page`. */
export async function recordFloor(page) {
  // A gliding scale would be recorded halfway.
  await page.emulateMediaFeatures([{ name: 'prefers-reduced-motion', value: 'reduce' }]);
  await page.addScriptTag({ content: await inPage('record') });
  return page.evaluate(() => globalThis.recorder.record());
}

/** The page that replays a recording. */
export async function floorPage({ hosts, slots, start }) {
  const elements = hosts.map(({ tag, markup, styles }) => `<${tag}><template shadowrootmode="open">${markup}<style>${styles}</style></template></${tag}>`);
  const data = JSON.stringify({ slots, start, tags: hosts.map(({ tag }) => tag) }).replaceAll('<', '\\u003c');
  const body = `<div class="columns">${elements.join('')}</div>`;
  return hostPage({ body, script: `${await inPage('replay')}\nrecorder.replay(${data});` });
}

/** The floor has to show what the library shows, or the ratio means nothing. */
export async function assertSame(page, { texts }) {
  const differing = await page.evaluate((expected) => {
    const differs = (degree) => {
      globalThis.floor.show(degree);
      return globalThis.floor.text() !== expected[degree];
    };
    return Object.keys(expected).map(Number).filter(differs);
  }, texts);
  if (differing.length > 0) throw new Error(`The floor differs from the library at ${differing.join(', ')}°.`);
}

async function inPage(name) {
  return bundle({ entryPoints: [fileURLToPath(new URL(`floor-${name}.mjs`, import.meta.url))], format: 'iife', globalName: 'recorder' });
}

/** A page of the library that is recorded and raced. */
export function libraryPage(body = CASE) {
  const script = `
    for (const view of document.querySelectorAll('astig-case, astig-case *')) if (view.localName.includes('-')) await view.updateComplete;
    const owner = document.querySelector('astig-case');
    const count = { moves: 0 };
    owner.addEventListener('astig-input', () => (count.moves += 1));
    const drawing = document.querySelector('astig-cornea').shadowRoot.querySelector('svg');
    globalThis.bench = { drawing, handle: drawing.querySelector('[part=incision-handle]'), count };`;
  return hostPage({ body, script, source: '/library.js' });
}
