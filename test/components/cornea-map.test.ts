import { expect, fixture, html } from '@open-wc/testing';
import fc from 'fast-check';
import { resetMouse, sendKeys, sendMouse } from '@web/test-runner-commands';
import { cornealSurface, shapeAfter, shapeBefore } from '../../core/shape.js';
import { evaluatePlan } from '../../core/index.js';
import type { AstigCase } from '../../components/case/case.js';
import type { AstigCornea } from '../../components/cornea/cornea.js';
import type { EyeSide } from '../../core/index.js';
import { inkBox } from './ink.js';
import { anyPlan, faults } from './label-faults.js';
import { CEDAR, apart, bringIntoView, centreOf, dragMouse, drawn, onEye } from './support.js';
import { speak } from './until.js';

const OUTLINE = '[part=map] .map-line';
const INCISION = '[part~="incision-handle"]';

async function mapped(attributes: { map?: string; power?: string; eye?: EyeSide; viewpoint?: string } = {}): Promise<{ eye: AstigCase; cornea: AstigCornea; root: ShadowRoot }> {
  const root = await fixture<HTMLElement>(html`<div><astig-case .plan=${{ ...CEDAR, eye: attributes.eye ?? 'right' }}><astig-cornea></astig-cornea></astig-case></div>`);
  root.style.inlineSize = '400px';
  const eye = root.querySelector('astig-case')!;
  const cornea = root.querySelector('astig-cornea')!;
  if (attributes.map !== undefined) cornea.setAttribute('map', attributes.map);
  if (attributes.power) cornea.setAttribute('map-power', attributes.power);
  if (attributes.viewpoint) cornea.setAttribute('viewpoint', attributes.viewpoint);
  await drawn(cornea);
  await bringIntoView(cornea.shadowRoot!.querySelector('svg')!);
  return { eye, cornea, root: cornea.shadowRoot! };
}

/** What the core says at a point. */
function powers(eye: EyeSide, distance: number, direction: number): Record<'before' | 'after', { axial: number; tangential: number }> {
  const plan = { ...CEDAR, eye };
  const at = (shape: Parameters<typeof cornealSurface>[0]) => cornealSurface(shape)({ distance, direction });
  return { before: at(shapeBefore(plan)), after: at(shapeAfter(plan, evaluatePlan(plan))) };
}

/** Power, direction and distance that are printed below the map. */
function reading(root: ShadowRoot): { power: number; direction: number; distance: number } {
  const text = root.querySelector('.map output')!.textContent.trim();
  const found = /^([+−]?)([\d.]+)\sD at (\d+)°, ([\d.]+)\smm/.exec(text);
  if (!found) throw new Error(`no reading: “${text}”`);
  return { power: (found[1] === '−' ? -1 : 1) * Number(found[2]), direction: Number(found[3]), distance: Number(found[4]) };
}

function setSlider(root: ShadowRoot, name: string, value: number): void {
  const slider = root.querySelector<HTMLInputElement>(`.map input[name=${name}]`)!;
  slider.value = String(value);
  slider.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
}

/** Printed powers with the direction in which each stands on the screen, degrees. */
function printed(root: ShadowRoot): { text: string; facing: number; distance: number }[] {
  return [...root.querySelectorAll<SVGTextElement>('.plate > svg:first-of-type > text.map-figure')].map((label) => {
    const [x, y] = [Number(label.getAttribute('x')), Number(label.getAttribute('y'))];
    return { text: label.textContent, facing: (Math.atan2(-y, x) * 180) / Math.PI, distance: Math.hypot(x, y) };
  });
}

const scaleOf = (root: ShadowRoot): number => root.querySelector<SVGCircleElement>('[part~=limbus]')!.r.baseVal.value / 5.85;
const outline = (root: ShadowRoot): string => [...root.querySelectorAll(OUTLINE)].map((path) => path.getAttribute('d')).join(' ');

describe('astig-cornea map', () => {
  afterEach(() => resetMouse());

  it('is not there, and nothing of it is loaded, until a page asks for it', async () => {
    performance.clearResourceTimings();
    const { cornea, root } = await mapped();
    const loaded = (): boolean => performance.getEntriesByType('resource').some(({ name }) => /\/cornea\.map[.-]/.test(name));
    expect([root.querySelectorAll('.map, [part=map]').length, loaded()]).to.deep.equal([0, false]);
    cornea.setAttribute('map', '');
    await drawn(cornea);
    expect([root.querySelectorAll('.map').length, root.querySelectorAll('[part=map]').length, loaded()]).to.deep.equal([1, 1, true]);
    cornea.removeAttribute('map');
    await drawn(cornea);
    expect(root.querySelectorAll('.map, [part=map]').length).to.equal(0);
  });

  for (const state of ['before', 'after', 'difference'] as const) {
    for (const power of ['axial', 'tangential'] as const) {
      it(`has the ${power} power of the core at points: ${state}`, async () => {
        const { cornea, root } = await mapped({ map: state, power });
        for (const [distance, direction] of [[0, 0], [1.5, 37], [3, 180], [4.5, 2], [5.8, 180]] as const) {
          setSlider(root, 'direction', direction);
          await drawn(cornea);
          setSlider(root, 'distance', distance);
          await drawn(cornea);
          const { before, after } = powers('right', distance, direction);
          const expected = { before: before[power], after: after[power], difference: after[power] - before[power] }[state];
          expect(reading(root).power, `${distance} mm at ${direction}°`).to.be.closeTo(expected, 0.00501);
        }
      });
    }
  }

  it('prints on its contours the power that the core has there', async () => {
    for (const eye of ['right', 'left'] as const) {
      const { root } = await mapped({ map: 'after', eye });
      const labels = printed(root);
      expect(labels.length).to.be.at.least(2);
      for (const { text, facing, distance } of labels) {
        // Straight pieces between the points of a grid of 0.3 mm.
        expect(powers(eye, distance / scaleOf(root), facing).after.axial).to.be.closeTo(Number(text), 0.05);
      }
    }
  });

  it('turns with the eye, and its figures with it', async () => {
    for (const [eye, viewpoint, turn] of [['right', 'above', 180], ['left', 'above', 180], ['right', 'temporal', 90], ['left', 'temporal', 270]] as const) {
      const { root } = await mapped({ map: 'difference', power: 'tangential', eye, viewpoint });
      const labels = printed(root);
      expect(labels.length, `${eye} ${viewpoint}`).to.be.at.least(1);
      for (const { text, facing, distance } of labels) {
        const { before, after } = powers(eye, distance / scaleOf(root), facing - turn);
        expect(after.tangential - before.tangential, `${eye} ${viewpoint} ${text}`).to.be.closeTo(Number(text.replace('−', '-')), 0.12);
      }
    }
  });

  it('reads the power at the mouse, from any seat, and nothing beside the cornea', async () => {
    for (const [viewpoint, turn] of [['facing', 0], ['temporal', 90]] as const) {
      const { cornea, root } = await mapped({ map: 'before', viewpoint });
      const at = onEye(cornea, 50 + turn, 3.5);
      await sendMouse({ type: 'move', position: at });
      await drawn(cornea);
      const { power, direction, distance } = reading(root);
      expect(apart(direction, 50), viewpoint).to.be.at.most(1);
      expect(distance, viewpoint).to.be.closeTo(3.5, 0.1);
      expect(power, viewpoint).to.be.closeTo(powers('right', 3.5, 50).before.axial, 0.03);
      expect(root.querySelector('[part=map-point] text')!.textContent).to.contain(power.toFixed(2));
      const off = onEye(cornea, 50 + turn, 7);
      await sendMouse({ type: 'move', position: off });
      await drawn(cornea);
      expect(root.querySelectorAll('[part=map-point]').length).to.equal(0);
      await resetMouse();
    }
  });

  it('is read by keyboard, which changes nothing of the plan', async () => {
    const { eye, cornea, root } = await mapped({ map: 'after' });
    let heard = 0;
    for (const type of ['astig-input', 'astig-change', 'input', 'change']) cornea.addEventListener(type, () => (heard += 1));
    const before = JSON.stringify(eye.plan);
    const distance = root.querySelector<HTMLInputElement>('.map input[name=distance]')!;
    distance.focus();
    for (let press = 0; press < 5; press += 1) await sendKeys({ press: 'ArrowRight' });
    await drawn(cornea);
    expect(reading(root).distance).to.be.closeTo(0.5, 0.001);
    expect(distance.getAttribute('aria-valuetext')).to.equal(root.querySelector('.map output')!.textContent.trim());
    expect(root.activeElement === distance).to.equal(true);
    expect([heard, JSON.stringify(eye.plan) === before]).to.deep.equal([0, true]);
  });

  it('follows the incision while it is dragged, on a scale that only grows', async () => {
    const { eye, cornea, root } = await mapped({ map: 'difference', power: 'tangential' });
    const before = outline(root);
    const ends: string[] = [];
    eye.addEventListener('astig-input', () => requestAnimationFrame(() => ends.push(root.querySelector('.map-scale text')!.textContent)));
    await dragMouse(centreOf(cornea, INCISION), onEye(cornea, 120, 6.75));
    await drawn(cornea);
    expect(outline(root) === before).to.equal(false);
    const sizes = ends.map((end) => Number(end.replace('−', '')));
    expect(sizes.every((size, index) => index === 0 || size >= sizes[index - 1]!)).to.equal(true);
  });

  it('says what is an illustration, where there is some', async () => {
    const said = async (map: string): Promise<boolean> => (await mapped({ map })).root.querySelector('.map')!.textContent.includes('Illustration');
    expect([await said('before'), await said('after'), await said('difference')]).to.deep.equal([false, true, true]);
  });

  it('is in the picture that is given away, without the point', async () => {
    const { cornea, root } = await mapped({ map: 'after' });
    setSlider(root, 'distance', 2);
    await drawn(cornea);
    const file = new DOMParser().parseFromString(cornea.toSVG(), 'image/svg+xml');
    const drawnPaths = root.querySelectorAll('[part=map] path').length;
    expect(drawnPaths).to.be.greaterThan(8);
    expect(file.querySelectorAll('g[clip-path] path').length).to.equal(drawnPaths);
    expect(file.querySelectorAll('clipPath circle').length).to.equal(1);
    expect(root.querySelectorAll('[part=map-point]').length).to.equal(1);
    expect(file.documentElement.outerHTML.includes('r="4"')).to.equal(false);
  });

  it('carries its scale in the file, and what it is', async () => {
    for (const [map, illustrated] of [['before', false], ['difference', true]] as const) {
      const { cornea, root } = await mapped({ map });
      const file = new DOMParser().parseFromString(cornea.toSVG(), 'image/svg+xml').documentElement;
      const [x, y, width, height] = file.getAttribute('viewBox')!.split(' ').map(Number);
      const scale = file.querySelector(':scope > svg')!;
      expect([x, width]).to.deep.equal([-width! / 2, root.querySelector('svg')!.viewBox.baseVal.width]);
      expect(Number(scale.getAttribute('y')) + Number(scale.getAttribute('height'))).to.be.closeTo(y! + height!, 0.01);
      expect(height).to.be.greaterThan(root.querySelector('svg')!.viewBox.baseVal.height);
      const texts = [...scale.querySelectorAll('text')].map((text) => text.textContent);
      for (const tick of root.querySelectorAll('.map-scale:not(.below) text')) expect(texts).to.include(tick.textContent);
      expect(texts.join(' ')).to.contain(`Axial power of the cornea, ${map === 'before' ? 'before the operation' : 'what the operation changes'}`);
      expect(texts.join(' ').includes('Illustration')).to.equal(illustrated);
      const bitmap = await createImageBitmap(await cornea.toPNG({ width: 400 }));
      expect(bitmap.height / bitmap.width).to.be.closeTo(height! / width!, 0.01);
    }
  });

  it('writes all of its file within the drawing, no text over another', async () => {
    for (const lang of ['en', 'de', 'zh', 'ar']) {
      const { cornea } = await mapped({ map: 'difference', power: 'tangential' });
      if (lang !== 'en') await speak(lang, cornea, cornea);
      cornea.parentElement!.parentElement!.style.inlineSize = '300px';
      await drawn(cornea);
      const holder = document.createElement('div');
      holder.innerHTML = cornea.toSVG();
      document.body.append(holder);
      expect(faults(holder.querySelector('svg')!), lang).to.deep.equal([]);
      holder.remove();
    }
  });

  it('tells more from less by signs and dashes alone', async () => {
    for (const [eye, viewpoint, turn] of [['right', 'facing', 0], ['left', 'temporal', 270]] as const) {
      const { root } = await mapped({ map: 'difference', eye, viewpoint });
      const scale = scaleOf(root);
      const signs = [...root.querySelector('[part=map] .map-sign')!.getAttribute('d')!.matchAll(/M([-\d.]+),([-\d.]+)h([\d.]+)(M[-\d.,]+v[\d.]+)?/g)];
      expect(signs.length).to.be.greaterThan(40);
      for (const [, left, y, length, upright] of signs) {
        const x = Number(left) + Number(length) / 2;
        const { before, after } = powers(eye, Math.hypot(x, Number(y)) / scale, (Math.atan2(-Number(y), x) * 180) / Math.PI - turn);
        const change = after.axial - before.axial;
        expect(upright ? change : -change, `${x} ${y}`).to.be.at.least(0.004);
      }
      expect(new Set(signs.map(([, , , , upright]) => Boolean(upright))).size, 'both').to.equal(2);
      const dashed = (line: Element): boolean => getComputedStyle(line).strokeDasharray !== 'none';
      expect([...root.querySelectorAll('[part=map] .map-line')].map((line) => [line.classList.contains('less'), dashed(line)]).every(([less, dash]) => less === dash)).to.equal(true);
    }
  });

  it('has its figures clear of handles, of each other and of the dial, on top of all lines', async () => {
    const { eye, cornea, root } = await mapped({ map: 'after' });
    let figures = 0;
    for (const plan of fc.sample(anyPlan, { numRuns: 25, seed: 7 })) {
      eye.plan = { ...plan, steepK: Math.min(plan.steepK!, plan.flatK! + 4) };
      await drawn(eye, cornea);
      const drawing = root.querySelector<SVGSVGElement>('.plate > svg')!;
      expect(faults(drawing), JSON.stringify(plan)).to.deep.equal([]);
      const labels = [...drawing.querySelectorAll(':scope > .map-figure')];
      figures += labels.length;
      const knobs = [...drawing.querySelectorAll('.knob')].map((knob) => knob.getBoundingClientRect());
      for (const label of labels) {
        const box = inkBox(label as SVGTextElement);
        expect(knobs.some((knob) => knob.left < box.right && knob.right > box.left && knob.top < box.bottom && knob.bottom > box.top), `${label.textContent} of ${JSON.stringify(plan)}`).to.equal(false);
        const last = drawing.querySelector('[part=arc], [part=incision], .remaining-petals');
        if (last) expect(Boolean(last.compareDocumentPosition(label) & Node.DOCUMENT_POSITION_FOLLOWING)).to.equal(true);
      }
    }
    expect(figures).to.be.greaterThan(50);
  });

  it('takes an unknown word for what is usual', async () => {
    const usual = outline((await mapped({ map: 'after' })).root);
    expect(outline((await mapped({ map: 'nonsense', power: 'nonsense' })).root) === usual).to.equal(true);
  });
});
