import { aTimeout, expect, fixture, html } from '@open-wc/testing';
import { resetMouse, sendKeys, sendMouse } from '@web/test-runner-commands';
import { ellipse, toVector } from '../../core/index.js';
import type { AstigCase } from '../../components/case/case.js';
import type { AstigVectors } from '../../components/vectors/vectors.js';
import { emulate } from '../engine.js';
import { CEDAR, drawn } from './support.js';

async function diagram(plan: object = {}): Promise<{ eye: AstigCase; view: AstigVectors; root: ShadowRoot }> {
  const eye = await fixture<AstigCase>(html`<astig-case .plan=${{ ...CEDAR, steepMeridian: 20, backSurface: 'typical', ...plan }}><astig-vectors></astig-vectors></astig-case>`);
  const view = eye.querySelector('astig-vectors')!;
  await drawn(view);
  return { eye, view, root: view.shadowRoot! };
}

/** Waits until the scale has come to rest. */
async function glided(view: AstigVectors): Promise<void> {
  await drawn(view);
  await aTimeout(300);
  await drawn(view);
}

/** Tail and tip of a drawn arrow in user units. The tip is the first point of the head. */
function ends(root: ShadowRoot, source: string): { tail: [number, number]; tip: [number, number] } {
  const group = root.querySelector(`svg > g[data-source="${source}"]`)!;
  const shaft = group.querySelector('.shaft')!;
  const head = group.querySelector('.head')!.getAttribute('d')!.match(/^M([-\d.e]+),([-\d.e]+)/)!;
  return { tail: [Number(shaft.getAttribute('x1')), Number(shaft.getAttribute('y1'))], tip: [Number(head[1]), Number(head[2])] };
}

function scaleOf(root: ShadowRoot, eye: AstigCase): number {
  const { tip } = ends(root, 'before');
  return Math.hypot(...tip) / eye.outcome.before.magnitude;
}

describe('astig-vectors', () => {
  afterEach(() => resetMouse());

  it('runs head to tail, exactly, and ends at what is left', async () => {
    const { eye, root } = await diagram({ lensCylinder: 0.5, lensMeridian: 70 });
    const sources = eye.outcome.steps.map(({ source }) => source);
    expect(sources).to.deep.equal(['backSurface', 'incision', 'arcs', 'lens']);
    let tip: [number, number] = ends(root, 'before').tip;
    expect(ends(root, 'before').tail).to.deep.equal([0, 0]);
    for (const source of sources) {
      const arrow = ends(root, source);
      expect(Math.hypot(arrow.tail[0] - tip[0], arrow.tail[1] - tip[1]), source).to.be.below(0.02);
      tip = arrow.tip;
    }
    const residual = ends(root, 'residual');
    expect(residual.tail).to.deep.equal([0, 0]);
    expect(Math.hypot(residual.tip[0] - tip[0], residual.tip[1] - tip[1])).to.be.below(0.02);
    expect(root.querySelectorAll('[part="vector"]')).to.have.length(5);
    expect(root.querySelectorAll('[part="residual"]')).to.have.length(1);
  });

  it('doubles the angle: against the rule to the right, steep at 45° up', async () => {
    const { eye, root } = await diagram();
    const scale = scaleOf(root, eye);
    const { x, y } = toVector(eye.outcome.before);
    const { tip } = ends(root, 'before');
    expect(tip[0]).to.be.closeTo(x * scale, 0.05);
    expect(tip[1]).to.be.closeTo(-y * scale, 0.05);
    const rim = [...root.querySelectorAll<SVGTextElement>('.rim text')];
    const place = (text: string): SVGTextElement => rim.find(({ textContent }) => textContent === text)!;
    expect(Number(place('180°').getAttribute('x'))).to.be.above(100);
    expect(Number(place('90°').getAttribute('x'))).to.be.below(-100);
    expect(Number(place('45°').getAttribute('y'))).to.be.below(-100);
    expect(Number(place('135°').getAttribute('y'))).to.be.above(100);
  });

  it('always uses its space: what is drawn reaches at least half of the way', async () => {
    for (const steepK of [43.3, 43.8, 44.4, 46, 49, 56]) {
      const { view, root } = await diagram({ flatK: 43, steepK, backSurface: 'omitted', incisionSite: null, arcCount: 0 });
      view.hideSpread = true;
      await glided(view);
      const rings = [...root.querySelectorAll<SVGCircleElement>('[part="ring"]')].map((ring) => ring.r.baseVal.value);
      expect(Math.hypot(...ends(root, 'before').tip) / Math.max(...rings), String(steepK)).to.be.within(0.5, 1);
      expect(rings.length).to.be.within(2, 6);
    }
  });

  it('draws the ellipses of half and of 95 in 100 eyes, and the circle of 0.50 D, to scale; they can be hidden', async () => {
    const { eye, view, root } = await diagram();
    await glided(view);
    const scale = scaleOf(root, eye);
    const shapes = [...root.querySelectorAll<SVGEllipseElement>('[part="spread"]')];
    expect(shapes.map((shape) => shape.dataset['share'])).to.deep.equal(['0.5', '0.95']);
    shapes.forEach((shape, index) => {
      const expected = ellipse(eye.outcome.spread, [0.5, 0.95][index]!);
      expect(shape.rx.baseVal.value).to.be.closeTo(expected.a * scale, 0.1);
      expect(shape.ry.baseVal.value).to.be.closeTo(expected.b * scale, 0.1);
      const { e, f } = shape.transform.baseVal.consolidate()!.matrix;
      expect([e, -f].map((value) => value / scale)[0]).to.be.closeTo(eye.outcome.spread.mean.x, 0.01);
    });
    expect(root.querySelector<SVGCircleElement>('[part="good"]')!.r.baseVal.value).to.be.closeTo(0.5 * scale, 0.1);
    view.hideSpread = true;
    await drawn(view);
    expect(root.querySelectorAll('[part="spread"], [part="good"]')).to.have.length(0);
  });

  it('rescales smoothly, and at once where less motion is wanted', async () => {
    const { eye, view, root } = await diagram();
    // Every frame until it must be at rest: a machine with much to do has few frames.
    const scales = async (steepK: number): Promise<number[]> => {
      eye.steepK = steepK;
      const seen: number[] = [];
      for (const start = performance.now(); performance.now() < start + 400; ) {
        await new Promise(requestAnimationFrame);
        await view.updateComplete;
        seen.push(scaleOf(root, eye));
      }
      return [...new Set(seen.map(Math.round))];
    };
    const smooth = await scales(49);
    expect(smooth.length).to.be.above(2);
    expect(smooth, 'always towards its goal').to.deep.equal([...smooth].sort((a, b) => b - a));
    await emulate({ 'prefers-reduced-motion': 'reduce' });
    expect(await scales(44)).to.have.length(1);
    await emulate({});
  });

  it('names an arrow and its figures on hover and on focus', async () => {
    const { view, root } = await diagram();
    const readout = (): string => root.querySelector('.readout')!.textContent;
    const box = root.querySelector('[data-source="arcs"] .shaft')!.getBoundingClientRect();
    await sendMouse({ type: 'move', position: [Math.round(box.x + box.width / 2), Math.round(box.y + box.height / 2)] });
    await drawn(view);
    expect(readout()).to.equal('The arc flattens 180° by 0.50\u00a0D.');
    await sendMouse({ type: 'move', position: [1, 1] });
    await drawn(view);
    expect(readout()).to.contain('doubled');
    document.body.focus();
    await sendKeys({ press: 'Tab' });
    await drawn(view);
    expect(readout()).to.equal('Before: 1.00\u00a0D\u00a0@\u00a020°.');
    const names = [...root.querySelectorAll('svg > g[data-source]')].map((group) => group.getAttribute('aria-label'));
    expect(names).to.include('The incision flattens 180° by 0.22\u00a0D.').and.include('The back surface adds 0.27\u00a0D\u00a0@\u00a0180°.');
  });

  it('tells the arrows apart without colour: by line style and by name', async () => {
    const { root } = await diagram({ lensCylinder: 0.5, lensMeridian: 70 });
    const looks = [...root.querySelectorAll('svg > g[data-source]')].map((group) => {
      const { strokeDasharray, strokeWidth } = getComputedStyle(group.querySelector('.shaft')!);
      return `${strokeDasharray} ${strokeWidth}`;
    });
    expect(new Set(looks).size).to.equal(looks.length);
    const key = [...root.querySelectorAll('.key li')].map((item) => item.textContent.trim());
    expect(key).to.have.length(6);
  });

  it('draws an eye without astigmatism as an empty diagram', async () => {
    const { root } = await diagram({ flatK: 43, steepK: 43, backSurface: 'omitted', incisionSite: null, arcCount: 0 });
    expect(root.querySelectorAll('svg > g[data-source]')).to.have.length(0);
    expect(root.querySelector('svg')!.getAttribute('aria-label')).to.contain('no astigmatism');
  });
});
