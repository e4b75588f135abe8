import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys, sendMouse } from '@web/test-runner-commands';
import type { AstigCase } from '../../components/case/case.js';
import type { AstigCornea } from '../../components/cornea/cornea.js';
import { CEDAR, apart, drawn, listen, until } from './support.js';
import type { ClientPoint } from './support.js';

/** A frame at the corner of the window, and what is in it. Its own corner is at a whole pixel. */
async function framed(source: string): Promise<{ frame: HTMLIFrameElement; inner: Document; corner: ClientPoint }> {
  const frame = document.createElement('iframe');
  frame.setAttribute('style', 'position: fixed; inset: 0 auto auto 20px; z-index: 9; inline-size: 480px; block-size: 590px; border: 0; background: Canvas');
  const loaded = new Promise((done) => (frame.onload = done));
  if (source.startsWith('/')) frame.src = source;
  else frame.srcdoc = source;
  (await fixture<HTMLElement>(html`<div></div>`)).append(frame);
  await loaded;
  return { frame, inner: frame.contentDocument!, corner: [20, 0] };
}

const knobOf = (cornea: Element): Element => cornea.shadowRoot!.querySelector('[part~=incision-handle] .knob')!;

/** Middle of something in a frame, px of the window. */
function middle(part: Element, [x, y]: ClientPoint): ClientPoint {
  const box = part.getBoundingClientRect();
  return [Math.round(x + box.x + box.width / 2), Math.round(y + box.y + box.height / 2)];
}

/** Drags the incision with the real mouse to a direction of the dial, degrees. */
async function dragIncision(cornea: Element, degrees: number, corner: ClientPoint): Promise<void> {
  await until(() => knobOf(cornea), 'the handle');
  cornea.scrollIntoView({ block: 'start' });
  await new Promise(requestAnimationFrame);
  const from = middle(knobOf(cornea), corner);
  const [x, y] = middle(cornea.shadowRoot!.querySelector('[part~=limbus]')!, corner);
  const reach = Math.hypot(from[0] - x, from[1] - y);
  const at = (angle: number): ClientPoint => [Math.round(x + reach * Math.cos((angle * Math.PI) / 180)), Math.round(y - reach * Math.sin((angle * Math.PI) / 180))];
  await sendMouse({ type: 'move', position: from });
  await sendMouse({ type: 'down' });
  for (let share = 0; share <= 4; share += 1) await sendMouse({ type: 'move', position: at(180 + ((degrees - 180) * share) / 4) });
  await sendMouse({ type: 'up' });
}

describe('a plain page with the built file', () => {
  it('is dragged and worked by keys, and says so', async () => {
    const { frame, inner, corner } = await framed('/stories/hosts/plain/index.html');
    const eye = inner.querySelector('astig-case') as AstigCase;
    await until(() => inner.querySelector('astig-cornea')?.shadowRoot?.querySelector('svg'), 'the drawing');
    const cornea = inner.querySelector('astig-cornea')!;
    expect(cornea instanceof HTMLElement, 'a document with elements of its own').to.equal(false);
    await dragIncision(cornea, 140, corner);
    expect(apart(eye.plan.incisionSite!, 140)).to.be.at.most(2);
    expect(inner.querySelector('output')!.value).to.match(/^After astig-cornea incision-handle: about \d\.\d\d D @ \d+° remains/);
    const before = eye.plan.incisionSite!;
    frame.contentWindow!.focus();
    cornea.shadowRoot!.querySelector<HTMLElement>('input.incision')!.focus();
    await sendKeys({ press: 'ArrowUp' });
    expect(eye.plan.incisionSite).to.equal(before + 1);
  });
});

/** What comes at once and on demand, as it looks in the document where it stands. */
function looks({ shadowRoot }: Element): string[] {
  const style = (selector: string): CSSStyleDeclaration => getComputedStyle(shadowRoot!.querySelector(selector)!);
  return [style('[part~=limbus]').strokeWidth, style('.visually-hidden').position, style('.handle').cursor, style('.knob').strokeWidth, style('.picture-bar').display];
}

const LOOKS = ['1.25px', 'absolute', 'grab', '2.5px', 'flex'];
/** With a bar to scroll by from the start: one that comes with the drawing makes it narrower while it is measured. */
const EMPTY = '<!doctype html><html lang="en" style="overflow-y: scroll"><body style="margin: 0; background: rgb(1, 2, 3)"></body></html>';

describe('an element that moves into another document', () => {
  async function moving(): Promise<{ eye: AstigCase; cornea: AstigCornea }> {
    const eye = await fixture<AstigCase>(html`<astig-case .plan=${CEDAR}><astig-cornea pictures></astig-cornea></astig-case>`);
    return { eye, cornea: eye.querySelector('astig-cornea')! };
  }
  const complete = async (cornea: AstigCornea): Promise<void> => {
    await until(() => cornea.shadowRoot?.querySelector('.handle') && cornea.shadowRoot.querySelector('.picture-bar'), 'what comes on demand');
    await drawn(cornea);
  };

  it('keeps its looks, its plan and its handles, there and back', async () => {
    const { eye, cornea } = await moving();
    await complete(cornea);
    expect(looks(cornea)).to.deep.equal(LOOKS);
    const home = eye.parentElement!;
    const { inner, corner } = await framed(EMPTY);
    inner.body.append(eye);
    await drawn(eye, cornea);
    expect(looks(cornea)).to.deep.equal(LOOKS);
    const log = listen(inner);
    await dragIncision(cornea, 140, corner);
    expect(apart(eye.plan.incisionSite!, 140)).to.be.at.most(2);
    expect(log.changes).to.have.length(1);
    home.append(eye);
    await drawn(eye, cornea);
    expect(looks(cornea)).to.deep.equal(LOOKS);
    expect(apart(eye.plan.incisionSite!, 140)).to.be.at.most(2);
  });

  it('is complete when it gets there before anything has come on demand', async () => {
    const { inner } = await framed(EMPTY);
    const eye = document.createElement('astig-case');
    eye.plan = CEDAR;
    eye.innerHTML = '<astig-cornea pictures></astig-cornea>';
    inner.body.append(eye);
    const cornea = eye.querySelector('astig-cornea')!;
    await complete(cornea);
    expect(looks(cornea)).to.deep.equal(LOOKS);
    expect(getComputedStyle(eye).display).to.equal('contents');
    // Out of the frame before it goes: a frame that is removed tells nobody in it.
    eye.remove();
  });

  it('gives away pictures with the ground that is behind it there', async () => {
    const { eye, cornea } = await moving();
    await complete(cornea);
    const { inner } = await framed(EMPTY);
    inner.body.append(eye);
    await drawn(eye, cornea);
    expect(cornea.toSVG()).to.match(/<rect[^>]* fill="rgb\(1, 2, 3\)"/);
    expect((await cornea.toPNG({ width: 400 })).type).to.equal('image/png');
    eye.remove();
  });
});
