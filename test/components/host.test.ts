import { expect, html } from '@open-wc/testing';
import { resetMouse, sendKeys, sendMouse } from '@web/test-runner-commands';
import type { TemplateResult } from 'lit';
import { apart, bringIntoView, centreOf, corneaFixture, dragMouse, drawn, listen, onEye } from './support.js';

const INCISION = '[part~="incision-handle"]';

/** Host pages that have broken dragged drawings before. */
const HOSTS: Record<string, (inner: TemplateResult) => TemplateResult> = {
  plain: (inner) => inner,
  'rotated by 30°': (inner) => html`<div class="host">${inner}</div><style>.host { transform: rotate(30deg); transform-origin: 200px 200px; }</style>`,
  'scaled by 0.6 and rotated': (inner) => html`<div class="host">${inner}</div><style>.host { transform: scale(0.6) rotate(-75deg); transform-origin: 200px 200px; }</style>`,
  'scaled unevenly': (inner) => html`<div class="host">${inner}</div><style>.host { transform: scale(1.3, 0.8); transform-origin: 0 0; }</style>`,
  'zoomed by 1.4': (inner) => html`<div class="host">${inner}</div><style>.host { zoom: 1.4; }</style>`,
  'right to left': (inner) => html`<div dir="rtl">${inner}</div>`,
  'scrolled in a box': (inner) => html`<div class="host"><div class="space"></div>${inner}<div class="space"></div></div><style>.host { block-size: 500px; overflow: auto; } .space { block-size: 400px; }</style>`,
  'with hostile styles': (inner) => html`${inner}<style>* { box-sizing: content-box !important; pointer-events: auto; } svg, circle, path { transform: translate(5px) !important; fill: red !important; } input { display: none !important; }</style>`,
};

describe('astig-cornea in a host page', () => {
  afterEach(() => resetMouse());

  for (const [name, wrap] of Object.entries(HOSTS)) {
    it(`drags exactly: ${name}`, async () => {
      const { eye, cornea } = await corneaFixture(wrap);
      const log = listen(document);
      // Targets off the axes, so that a swapped sign or axis cannot hide.
      for (const target of [140, 65]) {
        await dragMouse(centreOf(cornea, INCISION), onEye(cornea, target, 6.75));
        expect(apart(eye.incisionSite!, target), `towards ${target}`).to.be.at.most(1.5);
        await drawn(cornea);
      }
      expect(log.changes).to.have.length(2);
    });
  }

  it('works in nested shadow roots, and its events reach the page', async () => {
    const { eye, cornea } = await corneaFixture();
    const outer = document.createElement('div');
    const inner = document.createElement('div');
    outer.attachShadow({ mode: 'open' }).append(inner);
    inner.attachShadow({ mode: 'open' }).append(eye);
    cornea.parentElement!.setAttribute('style', 'inline-size: 400px');
    document.body.prepend(outer);
    await drawn(cornea);
    await bringIntoView(outer);
    const log = listen(document);
    await dragMouse(centreOf(cornea, INCISION), onEye(cornea, 140, 6.75));
    expect(apart(eye.incisionSite!, 140)).to.be.at.most(1);
    expect(log.changes).to.have.length(1);
    outer.remove();
  });

  it('finds the case across a shadow root between them', async () => {
    const { eye } = await corneaFixture();
    const box = document.createElement('div');
    const view = document.createElement('astig-cornea');
    eye.append(box);
    box.attachShadow({ mode: 'open' }).append(view);
    await drawn(view);
    expect(view.shadowRoot!.querySelector('[part~="incision"]')).to.not.equal(null);
  });

  it('keeps up with a page that slides and turns under the pointer in the middle of a drag', async () => {
    const { eye, cornea } = await corneaFixture((inner) => html`<div class="host">${inner}</div>`);
    const host = cornea.closest<HTMLElement>('.host')!;
    await dragMouse(centreOf(cornea, INCISION), onEye(cornea, 120, 6.75), { hold: true });
    for (const [transform, target] of [['translate(40px, 25px)', 70], ['rotate(20deg)', 130]] as const) {
      host.setAttribute('style', `transform: ${transform}`);
      await drawn(cornea);
      // The pointer is where the user sees it, on a page that has been painted.
      for (let frame = 0; frame < 2; frame += 1) await new Promise(requestAnimationFrame);
      await sendMouse({ type: 'move', position: onEye(cornea, target, 6.75) });
      expect(apart(eye.incisionSite!, target), transform).to.be.at.most(1.5);
    }
    await sendMouse({ type: 'up' });
  });

  const ENDS: Record<string, (cornea: Element) => Promise<void>> = {
    release: () => sendMouse({ type: 'up' }),
    Escape: () => sendKeys({ press: 'Escape' }),
    removal: async (cornea) => cornea.remove(),
  };
  for (const [name, end] of Object.entries(ENDS)) {
    it(`leaves nothing behind in the drawing when a drag ends by ${name}`, async () => {
      const { cornea } = await corneaFixture();
      const drawing = cornea.shadowRoot!.querySelector('svg')!;
      const hidden = (): number => drawing.querySelectorAll('[visibility="hidden"]').length;
      await dragMouse(centreOf(cornea, INCISION), onEye(cornea, 120, 6.75), { hold: true });
      expect(hidden()).to.be.above(0);
      await end(cornea);
      expect(hidden()).to.equal(0);
    });
  }

  it('lets go when it is removed in the middle of a drag', async () => {
    const { eye, cornea } = await corneaFixture();
    const log = listen(document);
    const parent = cornea.parentElement!;
    await dragMouse(centreOf(cornea, INCISION), onEye(cornea, 120, 6.75), { hold: true });
    expect(eye.incisionSite).to.not.equal(180);
    cornea.remove();
    expect(eye.incisionSite).to.equal(180);
    await sendMouse({ type: 'move', position: [100, 100] });
    await sendMouse({ type: 'up' });
    expect(log.changes).to.have.length(0);
    parent.append(cornea);
    await drawn(cornea);
    await dragMouse(centreOf(cornea, INCISION), onEye(cornea, 140, 6.75));
    expect(apart(eye.incisionSite!, 140)).to.be.at.most(1);
  });

  it('follows its case when it is moved into another one', async () => {
    const { cornea } = await corneaFixture();
    const other = document.createElement('astig-case');
    other.eye = 'left';
    document.body.append(other);
    other.append(cornea);
    await drawn(cornea);
    expect(cornea.shadowRoot!.querySelector('.title')!.textContent).to.equal('Left eye');
    other.remove();
  });

  it('tells a case that is named by id, though it does not lie around the drawing', async () => {
    const { eye, cornea } = await corneaFixture();
    eye.id = 'named';
    cornea.for = 'named';
    eye.parentElement!.append(cornea);
    cornea.setAttribute('style', 'inline-size: 400px');
    await drawn(cornea);
    await bringIntoView(cornea);
    const log = listen(eye);
    await dragMouse(centreOf(cornea, INCISION), onEye(cornea, 140, 6.75));
    expect(apart(eye.incisionSite!, 140)).to.be.at.most(1);
    expect(log.changes).to.have.length(1);
  });

  it('keeps 44 px of reach at every scale', async () => {
    for (const scale of [0.5, 1, 2]) {
      const { eye, cornea } = await corneaFixture((inner) => html`<div class="host">${inner}</div><style>.host { transform: scale(${scale}); transform-origin: 0 0; inline-size: 400px; }</style>`);
      await bringIntoView(cornea.shadowRoot!.querySelector(INCISION)!);
      const [x, y] = centreOf(cornea, INCISION);
      // 20 px beside the centre of the handle, away from the other handles.
      await dragMouse([x, y - 20], [x + 30, y - 60], { steps: 3 });
      expect(eye.incisionSite, `scale ${scale}`).to.not.equal(180);
    }
  });
});
