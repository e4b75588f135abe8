import { expect, html } from '@open-wc/testing';
import { resetMouse, sendKeys, sendMouse } from '@web/test-runner-commands';
import { evaluatePlan } from '../../core/index.js';
import { itWith } from '../engine.js';
import { apart, bringIntoView, centreOf, corneaFixture, dragMouse, dragTouch, drawn, drawnAt, listen, onEye, until } from './support.js';

const INCISION = '[part~="incision-handle"]';
const ARC = '[part~="arc-handle"]';
const ARC_END = '[part~="arc-end-handle"]';
const LENS = '[part~="lens-handle"]';

/** Waits until the page has stopped scrolling. */
async function settled(): Promise<void> {
  let last = NaN;
  for (let still = 0; still < 10; still = window.scrollY === last ? still + 1 : 0) {
    last = window.scrollY;
    await new Promise((resolve) => setTimeout(resolve, 30));
  }
}

describe('astig-cornea: pointer', () => {
  afterEach(() => resetMouse());

  it('moves the incision with the mouse: inputs on the way, one change, drawing and outcome follow', async () => {
    const { eye, cornea } = await corneaFixture();
    const log = listen(eye);
    await dragMouse(centreOf(cornea, INCISION), onEye(cornea, 120, 6.75));
    expect(log.inputs.length).to.be.within(1, 4);
    expect(log.changes).to.have.length(1);
    expect(log.changes[0]!.source).to.equal('astig-cornea incision-handle');
    expect(log.changes[0]!.plan.incisionSite).to.equal(eye.incisionSite);
    expect(apart(eye.incisionSite!, 120)).to.be.at.most(1);
    expect(eye.outcome.after).to.deep.equal(evaluatePlan(eye.plan).after);
    await drawn(cornea);
    expect(apart(drawnAt(cornea, '.entry'), eye.incisionSite!)).to.be.below(0.2);
  });

  it('redraws in the same frame as the movement', async () => {
    const { eye, cornea } = await corneaFixture();
    let seen = NaN;
    eye.addEventListener('astig-input', async () => {
      // After all that is drawn when the frame begins, and before it is painted.
      for (let turn = 0; turn < 20; turn += 1) await Promise.resolve();
      requestAnimationFrame(() => (seen = drawnAt(cornea, '.entry')));
    });
    await dragMouse(centreOf(cornea, INCISION), onEye(cornea, 150, 6.75), { steps: 1 });
    await until(() => !Number.isNaN(seen), 'a frame');
    expect(apart(seen, eye.incisionSite!)).to.be.below(0.2);
  });

  it('keeps the grab offset, so that a handle does not jump when it is taken', async () => {
    const { eye, cornea } = await corneaFixture();
    const [x, y] = centreOf(cornea, INCISION);
    await dragMouse([x, y + 12], [x + 1, y + 12], { steps: 1 });
    expect(eye.incisionSite).to.equal(180);
  });

  it('moves both arcs of a pair by their centre and sets their length by either end', async () => {
    const { eye, cornea } = await corneaFixture();
    eye.arcCount = 2;
    eye.arcLength = 60;
    eye.arcSite = 90;
    await drawn(cornea);
    await dragMouse(centreOf(cornea, ARC), onEye(cornea, 60, 4.35));
    expect(apart(eye.arcSite!, 60)).to.be.at.most(1);
    await drawn(cornea);
    expect(apart(drawnAt(cornea, '[part~="arc"]', 0), eye.arcSite!)).to.be.below(0.2);
    expect(apart(drawnAt(cornea, '[part~="arc"]', 1), eye.arcSite! + 180)).to.be.below(0.2);
    const site = eye.arcSite!;
    for (const [index, side] of [[0, -1], [1, 1]] as const) {
      await dragMouse(centreOf(cornea, ARC_END, index), onEye(cornea, site + side * 40, 5.5));
      expect(Math.abs(eye.arcLength - 80), `end ${index}`).to.be.at.most(2);
      expect(eye.arcSite).to.equal(site);
      eye.arcLength = 60;
      await drawn(cornea);
    }
  });

  it('turns the lens', async () => {
    const { eye, cornea } = await corneaFixture();
    eye.lensCylinder = 1;
    eye.lensMeridian = 60;
    await drawn(cornea);
    await dragMouse(centreOf(cornea, LENS), onEye(cornea, 130, 3.4));
    expect(apart(eye.lensMeridian!, 130)).to.be.at.most(1);
    expect(eye.outcome.steps.map(({ source }) => source)).to.include('lens');
  });

  it('snaps lightly to the steep meridian, and not with Alt', async () => {
    const { eye, cornea } = await corneaFixture();
    eye.steepMeridian = 130;
    await drawn(cornea);
    await dragMouse(centreOf(cornea, INCISION), onEye(cornea, 132, 6.75), { steps: 2 });
    expect(eye.incisionSite).to.equal(130);
    await sendKeys({ down: 'Alt' });
    await drawn(cornea);
    await dragMouse(centreOf(cornea, INCISION), onEye(cornea, 132, 6.75), { steps: 2 });
    await sendKeys({ up: 'Alt' });
    expect(eye.incisionSite).to.not.equal(130);
    expect(apart(eye.incisionSite!, 132)).to.be.at.most(1);
  });

  it('lets go of the snap when the hand aims slowly', async () => {
    const { eye, cornea } = await corneaFixture();
    eye.steepMeridian = 130;
    eye.incisionSite = 134;
    await drawn(cornea);
    const [from, to] = [centreOf(cornea, INCISION), onEye(cornea, 132, 6.75)];
    await dragMouse(from, from, { steps: 1, hold: true });
    for (let step = 1; step <= 3; step += 1) {
      await new Promise((resolve) => setTimeout(resolve, 120));
      await sendMouse({ type: 'move', position: [Math.round(from[0] + ((to[0] - from[0]) * step) / 3), Math.round(from[1] + ((to[1] - from[1]) * step) / 3)] });
    }
    await sendMouse({ type: 'up' });
    expect(eye.incisionSite).to.not.equal(130);
    expect(apart(eye.incisionSite!, 132)).to.be.at.most(1);
  });

  it('takes a click on the ring instead of a drag', async () => {
    const { eye, cornea } = await corneaFixture();
    const log = listen(eye);
    await sendMouse({ type: 'click', position: onEye(cornea, 90, 7.2) });
    expect(apart(eye.incisionSite!, 90)).to.be.at.most(1);
    expect([log.inputs.length, log.changes.length]).to.deep.equal([1, 1]);
    await drawn(cornea);
    await sendMouse({ type: 'click', position: onEye(cornea, 300, 5.5) });
    expect(apart(eye.arcSite!, 300)).to.be.at.most(1);
  });

  it('fires nothing for a click on a handle or a drag back to where it was', async () => {
    const { eye, cornea } = await corneaFixture();
    const log = listen(eye);
    const at = centreOf(cornea, INCISION);
    await sendMouse({ type: 'click', position: at });
    expect([log.inputs.length, log.changes.length]).to.deep.equal([0, 0]);
    await dragMouse(at, onEye(cornea, 150, 6.75), { hold: true });
    await sendMouse({ type: 'move', position: at });
    await sendMouse({ type: 'up' });
    expect(log.changes).to.have.length(0);
    expect(eye.incisionSite).to.equal(180);
  });

  it('puts the old value back on Escape and fires no change', async () => {
    const { eye, cornea } = await corneaFixture();
    const log = listen(eye);
    await dragMouse(centreOf(cornea, INCISION), onEye(cornea, 120, 6.75), { hold: true });
    expect(log.inputs.length).to.be.above(0);
    await sendKeys({ press: 'Escape' });
    expect(eye.incisionSite).to.equal(180);
    await sendMouse({ type: 'move', position: onEye(cornea, 60, 6.75) });
    await sendMouse({ type: 'up' });
    expect(eye.incisionSite).to.equal(180);
    expect(log.changes).to.have.length(0);
  });

  itWith('secondary button', 'ignores the secondary button', async () => {
    const { eye, cornea } = await corneaFixture();
    await sendMouse({ type: 'move', position: centreOf(cornea, INCISION) });
    await sendMouse({ type: 'down', button: 'right' });
    await sendMouse({ type: 'move', position: onEye(cornea, 90, 6.75) });
    await sendMouse({ type: 'up', button: 'right' });
    expect(eye.incisionSite).to.equal(180);
  });

  it('is not to be moved when read-only, as an element or as a case', async () => {
    for (const which of ['view', 'case'] as const) {
      const { eye, cornea } = await corneaFixture();
      const at = centreOf(cornea, INCISION);
      (which === 'view' ? cornea : eye).readOnly = true;
      await drawn(eye, cornea);
      expect(cornea.shadowRoot!.querySelector('.handle'), which).to.equal(null);
      expect(cornea.shadowRoot!.querySelector('input'), which).to.equal(null);
      await dragMouse(at, onEye(cornea, 90, 6.75));
      await sendMouse({ type: 'click', position: onEye(cornea, 45, 7.2) });
      expect(eye.incisionSite).to.equal(180);
    }
  });
});

describe('astig-cornea: touch', () => {
  itWith('touch', 'drags a handle by touch', async () => {
    const { eye, cornea } = await corneaFixture();
    const log = listen(eye);
    await dragTouch(centreOf(cornea, INCISION), onEye(cornea, 240, 6.75));
    expect(apart(eye.incisionSite!, 240)).to.be.at.most(1);
    expect(log.changes).to.have.length(1);
  });

  itWith('touch', 'undoes a touch that the system takes away', async () => {
    const { eye, cornea } = await corneaFixture();
    const log = listen(eye);
    await dragTouch(centreOf(cornea, INCISION), onEye(cornea, 240, 6.75), 'cancel');
    expect(log.inputs.length).to.be.above(0);
    expect(log.changes).to.have.length(0);
    expect(eye.incisionSite).to.equal(180);
  });

  itWith('touch', 'lets the page scroll over the drawing, but not over a handle', async () => {
    const { cornea } = await corneaFixture((inner) => html`${inner}<div class="tall"></div><style>.tall { block-size: 3000px; }</style>`);
    const [x, y] = onEye(cornea, 230, 3.2);
    const start = window.scrollY;
    await dragTouch([x, y], [x, y - 150]);
    await settled();
    expect(window.scrollY - start).to.be.above(50);
    await bringIntoView(cornea);
    await settled();
    const before = window.scrollY;
    const [hx, hy] = centreOf(cornea, INCISION);
    await dragTouch([hx, hy], [hx, hy - 150]);
    await settled();
    expect(window.scrollY).to.equal(before);
  });
});
