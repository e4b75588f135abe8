import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { AstigCase } from '../../components/case/case.js';
import type { AstigCornea } from '../../components/cornea/cornea.js';
import { corneaFixture, drawn, listen, press } from './support.js';

describe('astig-cornea: keyboard', () => {
  async function focused(name: string): Promise<{ eye: AstigCase; input: HTMLInputElement; cornea: AstigCornea }> {
    const { eye, cornea } = await corneaFixture();
    eye.lensCylinder = 1;
    eye.lensMeridian = 180;
    await drawn(cornea);
    const input = cornea.shadowRoot!.querySelector<HTMLInputElement>(`input.${name}`)!;
    input.focus();
    return { eye, input, cornea };
  }

  it('reaches every handle by Tab, the incision first, and shows where the focus is', async () => {
    const { cornea } = await corneaFixture();
    document.body.focus();
    await press('Tab');
    const order: string[] = [];
    for (let step = 0; step < 3; step += 1) {
      order.push(cornea.shadowRoot!.activeElement!.className);
      await drawn(cornea);
      expect(cornea.shadowRoot!.querySelector('.focus'), order.at(-1)).to.not.equal(null);
      await press('Tab');
    }
    expect(order).to.deep.equal(['incision', 'arc', 'arc-end']);
  });

  it('steps the incision by 1, 10 and 0.1 degrees, wraps round, and fires one input and one change a key', async () => {
    const { eye } = await focused('incision');
    const log = listen(eye);
    await press('ArrowRight');
    expect(eye.incisionSite).to.equal(181);
    await press('ArrowDown');
    await press('PageUp');
    expect(eye.incisionSite).to.equal(190);
    await press('Shift+ArrowLeft');
    expect(eye.incisionSite).to.equal(180);
    await press('Alt+ArrowUp');
    expect(eye.incisionSite).to.equal(180.1);
    expect([log.inputs.length, log.changes.length]).to.deep.equal([5, 5]);
    await press('Home');
    expect(eye.incisionSite).to.equal(0);
    await press('ArrowLeft');
    expect(eye.incisionSite).to.equal(359);
    await press('ArrowRight');
    expect(eye.incisionSite).to.equal(0);
    await press('End');
    expect(eye.incisionSite).to.equal(359);
  });

  it('fires one change for a key that is held', async () => {
    const { eye } = await focused('incision');
    const log = listen(eye);
    for (let repeat = 0; repeat < 4; repeat += 1) await sendKeys({ down: 'ArrowRight' });
    await sendKeys({ up: 'ArrowRight' });
    expect(eye.incisionSite).to.equal(184);
    expect([log.inputs.length, log.changes.length]).to.deep.equal([4, 1]);
  });

  it('gives up a held key on Escape', async () => {
    const { eye } = await focused('incision');
    const log = listen(eye);
    await sendKeys({ down: 'ArrowRight' });
    await press('Escape');
    await sendKeys({ up: 'ArrowRight' });
    expect(eye.incisionSite).to.equal(180);
    expect(log.changes).to.have.length(0);
  });

  it('sets site and length of the arc and the meridian of the lens', async () => {
    const arc = await focused('arc');
    await press('ArrowLeft');
    expect(arc.eye.arcSite).to.equal(359);
    const end = await focused('arc-end');
    await press('PageUp');
    expect(end.eye.arcLength).to.equal(40);
    await press('End');
    await press('ArrowUp');
    expect(end.eye.arcLength).to.equal(120);
    await press('Home');
    await press('ArrowDown');
    expect(end.eye.arcLength).to.equal(15);
    const lens = await focused('lens');
    await press('ArrowRight');
    expect(lens.eye.lensMeridian).to.equal(1);
    await press('ArrowLeft');
    expect(lens.eye.lensMeridian).to.equal(180);
  });

  it('speaks the value with its place in the eye', async () => {
    const { eye, input, cornea } = await focused('incision');
    expect(input.getAttribute('aria-valuetext')).to.equal("incision at 180 degrees, temporal, 9 o'clock");
    eye.eye = 'left';
    await drawn(cornea);
    expect(input.getAttribute('aria-valuetext')).to.equal("incision at 180 degrees, nasal, 9 o'clock");
    expect(input.getAttribute('aria-label')).to.equal('Site of the incision');
  });

  it('keeps the keys to itself, and other keys to the page', async () => {
    const { eye } = await focused('incision');
    const heard: string[] = [];
    const listener = (event: KeyboardEvent): void => void heard.push(event.key);
    document.addEventListener('keydown', listener);
    await press('ArrowRight');
    await press('Control+ArrowRight');
    await press('x');
    document.removeEventListener('keydown', listener);
    expect(heard).to.include('x').and.not.include('ArrowLeft');
    expect(heard.filter((key) => key === 'ArrowRight')).to.have.length(1);
    expect(eye.incisionSite).to.equal(181);
  });

  it('lets nothing of the native slider leak to the page', async () => {
    const { input } = await focused('incision');
    let leaked = 0;
    document.addEventListener('input', () => (leaked += 1), { once: true });
    input.value = '200';
    input.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
    expect(leaked).to.equal(0);
  });

  it('moves when assistive technology sets the slider', async () => {
    const { eye, input } = await focused('incision');
    const log = listen(eye);
    input.value = '200';
    input.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
    input.dispatchEvent(new Event('change', { bubbles: true }));
    expect(eye.incisionSite).to.equal(200);
    expect([log.inputs.length, log.changes.length]).to.deep.equal([1, 1]);
  });
});
