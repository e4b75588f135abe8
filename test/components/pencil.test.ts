import { expect, fixture, html } from '@open-wc/testing';
import { resetMouse, sendMouse } from '@web/test-runner-commands';
import { evaluatePlan } from '../../core/index.js';
import { plannedBundle } from '../../core/eye-plain.js';
import { emulate, itInEveryScheme, itWith } from '../engine.js';
import { ellipseSeen, lineSeen, OBLIQUE, pencilFixture, said } from './pencil-support.js';
import { CEDAR, apart, centreOf, corneaFixture, dragMouse, drawn, onEye } from './support.js';
import { untilText } from './until.js';

const FROM_FRONT = { turn: '0', tilt: '0' };
const FROM_SIDE = { turn: '90', tilt: '0' };

describe('astig-pencil: what is drawn', () => {
  it('shows both lines from the front as they lie on the dial: the front one across the steep meridian', async () => {
    const { root } = await pencilFixture({ set: FROM_FRONT });
    expect(apart(2 * lineSeen(root, 'front-line').direction, 2 * 150)).to.be.below(1);
    expect(apart(2 * lineSeen(root, 'back-line').direction, 2 * 60)).to.be.below(1);
  });

  it('shows the light from the left to the right when seen from the side: front line, circle, back line', async () => {
    const { root } = await pencilFixture({ set: FROM_SIDE });
    const [front, circle, back, retina] = [lineSeen(root, 'front-line').middle.x, ellipseSeen(root, '[part="circle"]').x, lineSeen(root, 'back-line').middle.x, ellipseSeen(root, '[part="retina"]').x];
    expect(front).to.be.below(circle - 20);
    expect(circle).to.be.below(back - 20);
    expect(retina).to.be.closeTo(circle, 0.05);
  });

  it('keeps depths in proportion', async () => {
    const { root } = await pencilFixture({ set: { ...FROM_SIDE, 'in-focus': 'front-line', screen: 'back-line' } });
    const { front, back } = plannedBundle({ meanPower: 43, astigmatism: { magnitude: 2, meridian: 60 }, pupil: 3, focus: 'front-line' });
    const drawnAt = [ellipseSeen(root, '[part="retina"]').x, lineSeen(root, 'front-line').middle.x, ellipseSeen(root, '[part="circle"]').x, lineSeen(root, 'back-line').middle.x];
    expect(drawnAt[0]).to.be.closeTo(drawnAt[1]!, 0.05);
    expect((drawnAt[2]! - drawnAt[1]!) / (drawnAt[3]! - drawnAt[1]!)).to.be.within(0.4, 0.5);
    expect(said(root)).to.include(`${(back.position - front.position).toFixed(2)} mm behind the retina (2.00 D)`);
  });

  it('shows the patch on the dial as the screen cuts the bundle', async () => {
    const { view, root } = await pencilFixture({ set: { screen: 'front-line' } });
    const direction = (): number => ((ellipseSeen(root, '[part="patch"]').turned % 180) + 180) % 180;
    expect(direction()).to.be.closeTo(150, 0.5);
    expect(said(root)).to.match(/Patch: a line of \d+ µm along 150°\.$/);
    view.screen = 'back-line';
    await drawn(view);
    expect(direction()).to.be.closeTo(60, 0.5);
    view.screen = 'circle';
    await drawn(view);
    expect(said(root)).to.match(/Patch: round, \d+ µm across\.$/);
    const { longer, shorter } = ellipseSeen(root, '[part="patch"]');
    expect(longer).to.be.closeTo(shorter, 0.3);
  });

  it('says for a known eye which line is where, and why', async () => {
    const { root } = await pencilFixture();
    const { front, back, excess } = plannedBundle({ meanPower: 43, astigmatism: { magnitude: 2, meridian: 60 }, pupil: 3, focus: 'least-blur' });
    expect(said(root)).to.include(`Front line along 150°, ${(1000 * front.length).toFixed(0)} µm long, ${(24.09 - front.position).toFixed(2)} mm in front of the retina (${excess.steep.toFixed(2)} D).`);
    expect(said(root)).to.include(`Back line along 60°, ${(1000 * back.length).toFixed(0)} µm long, ${(back.position - 24.09).toFixed(2)} mm behind the retina (${(-excess.flat).toFixed(2)} D).`);
    expect(root.querySelector('figcaption')!.textContent).to.include('The steeper meridian, 60°, bends light more').and.include('A schematic eye with the circle of least confusion on the retina');
    expect(root.querySelector('figcaption')!.textContent).to.match(/Widths are drawn [\d.]+ times as large as depths/);
    expect(root.textContent).to.include('Estimates for teaching');
  });

  it('draws widths as many times as large as depths as it says', async () => {
    const { root } = await pencilFixture({ set: FROM_SIDE });
    const { front, back } = plannedBundle({ meanPower: 43, astigmatism: { magnitude: 2, meridian: 60 }, pupil: 3, focus: 'least-blur' });
    const along = (lineSeen(root, 'back-line').middle.x - lineSeen(root, 'front-line').middle.x) / (back.position - front.position);
    // From the side only the upright share of a line is seen.
    const across = lineSeen(root, 'back-line').length / (back.length * Math.sin((60 * Math.PI) / 180));
    const [, told] = /([\d.]+) times/.exec(root.querySelector('figcaption')!.textContent)!;
    expect(across / along).to.be.closeTo(Number(told), 0.06);
  });

  it('has one point and no lines without astigmatism', async () => {
    const { root } = await pencilFixture({ plan: { flatK: 43, steepK: 43 } });
    expect(root.querySelector('[part="front-line"]')).to.equal(null);
    expect(said(root)).to.include('All light meets in one point, on the retina.').and.include('Patch: a point.');
    expect(root.querySelectorAll('.stops button').length).to.equal(2);
  });

  it('shows the cornea before surgery when asked to, with the back surface where the plan counts it', async () => {
    const plan = { ...CEDAR, backSurface: 'typical' } as const;
    const { view, root } = await pencilFixture({ plan });
    const told = (): string => root.querySelector('figcaption .sourced')!.textContent.replaceAll('\u00a0', ' ');
    const { after } = evaluatePlan(plan);
    expect(told()).to.equal(`${after.magnitude.toFixed(2)} D @ 180°`);
    view.shows = 'before';
    await drawn(view);
    expect(told()).to.equal('1.27 D @ 180°');
    expect(root.querySelector('figure')!.getAttribute('aria-label')).to.equal('Right eye: bundle of light before surgery');
  });

  it('says so instead of drawing a cornea beyond its range', async () => {
    const { root } = await pencilFixture({ plan: { flatK: 30, steepK: 60 } });
    expect(root.querySelector('svg')).to.equal(null);
    expect(root.textContent).to.include('More than 20.00');
  });

  it('tells which eye is drawn when asked', async () => {
    const { view, root } = await pencilFixture();
    root.querySelector('summary')!.click();
    await drawn(view);
    expect(root.querySelector('details')!.textContent.replaceAll('\u00a0', ' ')).to.include('A schematic eye, not this one').and.include('24.09 mm').and.include('Bennett & Rabbetts').and.include('assumed');
  });

  it('refuses settings that it cannot take, keeps the last good ones, and says so', async () => {
    const { view, root } = await pencilFixture({ set: { turn: '70' } });
    const before = said(root);
    for (const [name, value] of [['pupil', '40'], ['screen', 'nowhere'], ['in-focus', 'both'], ['shows', 'never'], ['turn', 'far'], ['tilt', '90']] as const) {
      view.setAttribute(name, value);
      await drawn(view);
      expect(root.querySelector('[part="refused"]')!.textContent, name).to.include(value).and.include('allowed is');
      expect(said(root)).to.equal(before);
      view.removeAttribute(name);
      await drawn(view);
    }
    view.shows = 'after';
    view.inFocus = 'least-blur';
    await drawn(view);
    expect(root.querySelector('[part="refused"]')).to.equal(null);
  });
});

describe('astig-pencil: live', () => {
  afterEach(() => resetMouse());

  it('follows the incision while it is dragged on a cornea, and a screen on a line stays on it', async () => {
    const { eye, cornea } = await corneaFixture();
    const view = document.createElement('astig-pencil');
    view.screen = 'front-line';
    eye.append(view);
    await drawn(view);
    await dragMouse(centreOf(cornea, '.hit', 3), onEye(cornea, 110, 7.2), { hold: true });
    await drawn(view);
    const { after } = eye.outcome;
    const { excess } = plannedBundle({ meanPower: 43.5, astigmatism: after, pupil: 3, focus: 'least-blur' });
    expect(apart(eye.incisionSite!, 180)).to.be.above(20);
    expect(said(view.shadowRoot!)).to.include(`Front line along ${Math.round(after.meridian + 90) % 180 || 180}°`).and.include(`(${excess.steep.toFixed(2)} D)`).and.include('Patch: a line');
    await sendMouse({ type: 'up' });
  });

  it('keeps its scale within a range, so that lines are seen to come together', async () => {
    const { eye, view, root } = await pencilFixture({ set: FROM_SIDE });
    const distance = (): number => lineSeen(root, 'back-line').middle.x - lineSeen(root, 'front-line').middle.x;
    const wide = distance();
    eye.steepK = 43.8;
    await drawn(eye, view);
    expect(distance() / wide).to.be.closeTo(0.9, 0.02);
  });
});

describe('astig-pencil: for everybody', () => {
  afterEach(() => emulate({}));

  itInEveryScheme('has no fault that axe can find', async () => {
    const { view, root } = await pencilFixture({ set: { pictures: '' } });
    root.querySelector('summary')!.click();
    await drawn(view);
    await expect(view).to.be.accessible();
  });

  it('has none as a still and with refused settings', async () => {
    const { view } = await pencilFixture({ set: { 'read-only': '', pupil: '99' } });
    await expect(view).to.be.accessible();
  });

  it('says what it needs without a case', async () => {
    const view = await fixture<HTMLElement>(html`<astig-pencil></astig-pencil>`);
    expect(view.shadowRoot!.textContent).to.include('astig-case');
  });

  it('finds a case by id', async () => {
    await fixture(html`<div><astig-case id="far" .plan=${OBLIQUE}></astig-case><astig-pencil for="far"></astig-pencil></div>`);
    const view = document.querySelector('astig-pencil')!;
    await drawn(view);
    expect(said(view.shadowRoot!)).to.include('along 150°');
  });

  itWith('print', 'is a still on paper: no controls, no knob', async () => {
    const { root } = await pencilFixture();
    await emulate({ media: 'print' });
    for (const selector of ['.controls', '.handle', '.hint']) expect(getComputedStyle(root.querySelector(selector)!).display, selector).to.equal('none');
    expect(getComputedStyle(root.querySelector('svg')!).display).to.equal('block');
  });

  it('gives itself away as a picture, without the knob', async () => {
    const { view } = await pencilFixture();
    const file = new DOMParser().parseFromString(view.toSVG(), 'image/svg+xml');
    expect(file.querySelector('parsererror')).to.equal(null);
    expect(file.querySelector('title')!.textContent).to.include('Front line along 150°');
    expect(file.querySelectorAll('ellipse').length).to.be.above(4);
    expect(view.toSVG()).to.not.match(/class=|part=|M-2.5 -3.5/);
    const blob = await view.toPNG({ width: 320 });
    expect(blob.type).to.equal('image/png');
    const { width } = await createImageBitmap(blob);
    expect(width).to.equal(320);
  });

  it('speaks the language of the page, and draws the light to the right in Arabic too', async () => {
    const { view, root } = await pencilFixture({ set: { ...FROM_SIDE, lang: 'ar' } });
    await untilText(() => root.querySelector('svg')!.getAttribute('aria-label')!, /خط البؤرة/);
    await drawn(view);
    expect(root.querySelector('figure')!.dir).to.equal('rtl');
    expect(lineSeen(root, 'front-line').middle.x).to.be.below(lineSeen(root, 'back-line').middle.x);
    expect(getComputedStyle(root.querySelector('input.screen')!).direction).to.equal('ltr');
  });
});
