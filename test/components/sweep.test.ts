import { expect, html } from '@open-wc/testing';
import { resetMouse, sendKeys, sendMouse } from '@web/test-runner-commands';
import { evaluatePlan } from '../../core/index.js';
import { itWith } from '../engine.js';
import { apart, centreOf, dragMouse, dragTouch, drawn, listen, press } from './support.js';
import { inPlot, marker, sweepFixture } from './sweep-support.js';

const KNOB = '.hit';

describe('astig-sweep: pointer', () => {
  afterEach(() => resetMouse());

  it('moves the incision with the mouse: an input for each move, one change, and the drawing follows', async () => {
    const { eye, view, root } = await sweepFixture();
    const log = listen(eye);
    await dragMouse(centreOf(view, KNOB), inPlot({ root }, 120, 0.5));
    expect([log.inputs.length, log.changes.length]).to.deep.equal([4, 1]);
    expect(log.changes[0]!.source).to.equal('astig-sweep marker');
    expect(log.changes[0]!.plan.incisionSite).to.equal(eye.incisionSite);
    expect(apart(eye.incisionSite!, 120)).to.be.at.most(1.2);
    expect(eye.outcome.after).to.deep.equal(evaluatePlan(eye.plan).after);
    await drawn(view);
    const { site, dioptres } = marker(root);
    expect(site).to.be.closeTo(eye.incisionSite!, 0.05);
    expect(dioptres).to.be.closeTo(eye.outcome.after.magnitude, 0.002);
  });

  it('leaves curve, scale and names as they are while the marker moves', async () => {
    const { view, root } = await sweepFixture();
    const still = (): string => [root.querySelector('[part="curve"]')!.getAttribute('d'), ...[...root.querySelectorAll('.name')].map((name) => name.outerHTML.replace(/<!--.*?-->/g, ''))].join();
    const before = still();
    await dragMouse(centreOf(view, KNOB), inPlot({ root }, 300, 0.5));
    await drawn(view);
    expect(still()).to.equal(before);
  });

  itWith('touch', 'drags by touch', async () => {
    const { eye, view, root } = await sweepFixture();
    const log = listen(eye);
    await dragTouch(centreOf(view, KNOB), inPlot({ root }, 270, 0.5));
    expect([log.inputs.length, log.changes.length]).to.deep.equal([4, 1]);
    expect(apart(eye.incisionSite!, 270)).to.be.at.most(1.2);
  });

  itWith('touch', 'takes a click that follows a touch drag', async () => {
    const { eye, view, root } = await sweepFixture();
    await dragTouch(centreOf(view, KNOB), inPlot({ root }, 270, 0.5));
    await drawn(view);
    await sendMouse({ type: 'click', position: inPlot({ root }, 45, 1.2) });
    expect(apart(eye.incisionSite!, 45)).to.be.at.most(1);
  });

  itWith('touch', 'undoes a touch that the system takes away', async () => {
    const { eye, view, root } = await sweepFixture();
    const log = listen(eye);
    await dragTouch(centreOf(view, KNOB), inPlot({ root }, 270, 0.5), 'cancel');
    expect([log.inputs.length, log.changes.length]).to.deep.equal([4, 0]);
    expect(eye.incisionSite).to.equal(180);
  });

  it('puts the old value back on Escape and fires no change, not even by the click that ends it', async () => {
    const { eye, view, root } = await sweepFixture();
    const log = listen(eye);
    await dragMouse(centreOf(view, KNOB), inPlot({ root }, 120, 0.5), { hold: true });
    await sendKeys({ press: 'Escape' });
    expect(eye.incisionSite).to.equal(180);
    await sendMouse({ type: 'move', position: inPlot({ root }, 60, 1) });
    await sendMouse({ type: 'up' });
    expect(eye.incisionSite).to.equal(180);
    expect([log.inputs.length, log.changes.length]).to.deep.equal([4, 0]);
  });

  it('stops at the edges of the plot', async () => {
    const { eye, view, root } = await sweepFixture();
    const [right, y] = inPlot({ root }, 360, 0.5);
    await dragMouse(centreOf(view, KNOB), [right + 40, y]);
    expect(eye.incisionSite).to.equal(359);
    await drawn(view);
    const [left] = inPlot({ root }, 0, 0.5);
    await dragMouse(centreOf(view, KNOB), [left - 40, y]);
    expect(eye.incisionSite).to.equal(0);
  });

  it('keeps the grab offset, and moves by tenths with Alt', async () => {
    const { eye, view, root } = await sweepFixture({ width: 520 });
    const [x, y] = centreOf(view, KNOB);
    await dragMouse([x + 15, y], [x + 15, y - 10], { steps: 1 });
    expect(eye.incisionSite).to.equal(180);
    const sites: number[] = [];
    await sendKeys({ down: 'Alt' });
    for (const target of [203, 90, 300]) {
      await dragMouse(centreOf(view, KNOB), inPlot({ root }, target, 0.5));
      expect(apart(eye.incisionSite!, target)).to.be.at.most(1.2);
      sites.push(eye.incisionSite!);
      await drawn(view);
    }
    await sendKeys({ up: 'Alt' });
    expect(sites.some((site) => site % 1 !== 0), String(sites)).to.equal(true);
  });

  itWith('secondary button', 'takes no click of the secondary button', async () => {
    const { eye, root } = await sweepFixture();
    const log = listen(eye);
    await sendMouse({ type: 'click', position: inPlot({ root }, 300, 1), button: 'right' });
    expect([log.inputs.length, log.changes.length]).to.deep.equal([0, 0]);
  });

  it('takes a click in the plot, none on the marker itself and none outside', async () => {
    const { eye, view, root } = await sweepFixture();
    const log = listen(eye);
    const [x, y] = inPlot({ root }, 300, 0);
    await sendMouse({ type: 'click', position: centreOf(view, KNOB) });
    await sendMouse({ type: 'click', position: [x, y + 40] });
    expect([log.inputs.length, log.changes.length]).to.deep.equal([0, 0]);
    await sendMouse({ type: 'click', position: inPlot({ root }, 300, 1) });
    expect([log.inputs.length, log.changes.length]).to.deep.equal([1, 1]);
    expect(apart(eye.incisionSite!, 300)).to.be.at.most(1);
  });

  it('lets go when it is removed in the middle of a drag', async () => {
    const { eye, view, root } = await sweepFixture();
    const log = listen(document);
    const parent = view.parentElement!;
    await dragMouse(centreOf(view, KNOB), inPlot({ root }, 120, 0.5), { hold: true });
    expect(eye.incisionSite).to.not.equal(180);
    view.remove();
    expect(eye.incisionSite).to.equal(180);
    await sendMouse({ type: 'move', position: [100, 100] });
    await sendMouse({ type: 'up' });
    expect(log.changes).to.have.length(0);
    parent.append(view);
    await drawn(view);
    await dragMouse(centreOf(view, KNOB), inPlot({ root }, 90, 0.5));
    expect(apart(eye.incisionSite!, 90)).to.be.at.most(1.2);
  });

  for (const [name, style] of [['rotated and scaled', '.host { transform: rotate(30deg) scale(0.8); transform-origin: 200px 100px; }'], ['right to left', '.host { direction: rtl; }'], ['zoomed', '.host { zoom: 1.4; }']] as const) {
    it(`drags exactly in a host: ${name}`, async () => {
      const { eye, view, root } = await sweepFixture({ wrap: (inner) => html`<div class="host">${inner}</div><style>${style}</style>` });
      for (const target of [250, 65]) {
        await dragMouse(centreOf(view, KNOB), inPlot({ root }, target, 0.5));
        expect(apart(eye.incisionSite!, target), `towards ${target}`).to.be.at.most(2);
        await drawn(view);
      }
    });
  }

  it('is not to be moved when read-only, as an element or as a case', async () => {
    for (const which of ['view', 'case'] as const) {
      const { eye, view, root } = await sweepFixture();
      const at = centreOf(view, KNOB);
      (which === 'view' ? view : eye).readOnly = true;
      await drawn(eye, view);
      for (const selector of ['.handle', 'input', '.field']) expect(root.querySelector(selector) === null, `${which} ${selector}`).to.equal(true);
      await dragMouse(at, inPlot({ root }, 90, 0.5));
      await sendMouse({ type: 'click', position: inPlot({ root }, 45, 1) });
      expect(eye.incisionSite).to.equal(180);
      expect(marker(root).site).to.be.closeTo(180, 0.05);
    }
  });
});

describe('astig-sweep: keyboard', () => {
  it('steps by 1, 10 and 0.1 degrees, wraps round, and fires one input and one change a key', async () => {
    const { eye, view, root } = await sweepFixture();
    const log = listen(eye);
    document.body.focus();
    await press('Tab');
    await drawn(view);
    expect(root.activeElement!.className).to.equal('marker');
    expect(root.querySelector('.focus')).to.not.equal(null);
    const steps: [string, number][] = [['ArrowRight', 181], ['ArrowDown', 180], ['PageUp', 190], ['Shift+ArrowLeft', 180], ['Alt+ArrowUp', 180.1], ['Home', 0], ['ArrowLeft', 359], ['ArrowRight', 0], ['PageDown', 350], ['End', 359]];
    for (const [keys, site] of steps) {
      await press(keys);
      expect(eye.incisionSite, keys).to.equal(site);
    }
    expect([log.inputs.length, log.changes.length]).to.deep.equal([steps.length, steps.length]);
    expect(new Set(log.changes.map(({ source }) => source))).to.deep.equal(new Set(['astig-sweep marker']));
  });

  it('gives up a held key on Escape', async () => {
    const { eye, root } = await sweepFixture();
    const log = listen(eye);
    root.querySelector('input')!.focus();
    for (let repeat = 0; repeat < 3; repeat += 1) await sendKeys({ down: 'ArrowRight' });
    await press('Escape');
    await sendKeys({ up: 'ArrowRight' });
    expect(eye.incisionSite).to.equal(180);
    expect([log.inputs.length, log.changes.length]).to.deep.equal([3, 0]);
  });

  it('speaks the site, its place in the eye, and what remains', async () => {
    const { eye, view, root } = await sweepFixture();
    const input = root.querySelector('input')!;
    expect(input.getAttribute('aria-label')).to.equal('Site of the incision');
    expect(input.getAttribute('aria-valuetext')).to.equal("incision at 180 degrees, temporal, 9 o'clock: 0.28 dioptres remaining");
    eye.eye = 'left';
    await drawn(view);
    expect(input.getAttribute('aria-valuetext')).to.match(/^incision at 180 degrees, nasal, 9 o'clock: \d\.\d\d dioptres remaining$/);
  });
});

describe('astig-sweep: no incision planned', () => {
  afterEach(() => resetMouse());

  it('shows the curve without a marker, and a click plans one', async () => {
    const { eye, view, root } = await sweepFixture({ plan: { incisionSite: null } });
    const log = listen(eye);
    for (const selector of ['[part="marker"]', '.handle', 'input', '.flag']) expect(root.querySelector(selector) === null, selector).to.equal(true);
    expect(root.querySelector('[part="curve"]')).to.not.equal(null);
    await sendMouse({ type: 'click', position: inPlot({ root }, 90, 1) });
    await drawn(view);
    expect([log.inputs.length, log.changes.length]).to.deep.equal([1, 1]);
    expect(apart(eye.incisionSite!, 90)).to.be.at.most(1);
    expect(marker(root).site).to.be.closeTo(eye.incisionSite!, 0.05);
    expect(root.activeElement === root.querySelector('input'), 'focus on the slider').to.equal(true);
  });

  it('plans one at the best site without a pointer, and hands the focus to its control', async () => {
    const { eye, view, root } = await sweepFixture({ plan: { incisionSite: null } });
    root.querySelector<HTMLElement>('.plan')!.focus();
    await press('Enter');
    await drawn(view);
    expect(eye.incisionSite).to.equal(0);
    expect(root.activeElement === root.querySelector('input'), 'focus on the slider').to.equal(true);
    eye.undo();
    await drawn(view);
    expect(root.activeElement !== null, 'the focus stays in the drawing').to.equal(true);
  });
});
