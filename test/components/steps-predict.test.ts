import { expect, html } from '@open-wc/testing';
import { emulate } from '../engine.js';
import type { AstigOptions } from '../../components/options/options.js';
import type { AstigSweep } from '../../components/sweep/sweep.js';
import { asBefore, settled, texts, walk } from './steps-support.js';
import { bringIntoView, centreOf, dragMouse, drawn, onScreen, press, until } from './support.js';

describe('astig-steps: predict first', () => {
  afterEach(asBefore);

  it('asks before it shows: by sliders and keys, then says the difference as a vector', async () => {
    const page = await walk(html`<astig-step>One.</astig-step><astig-step predict="And now?" incision-site="180" incision-flattening="0.5">Half a dioptre less.</astig-step>`);
    page.at('.next').click();
    await until(() => page.at('.predict'), 'the question');
    await drawn(page.steps);
    expect(page.text('.predict p')).to.equal('And now?');
    expect(page.eye.plan.incisionSite, 'not shown yet').to.equal(null);
    expect(texts(page).join()).to.equal('One.');
    page.at('input.magnitude').focus();
    for (let press_ = 0; press_ < 4; press_ += 1) await press('ArrowLeft');
    await drawn(page.steps);
    // 1.50 D less four steps of 0.05 D, at 180°; 1.00 D remains.
    page.at('.show').click();
    await settled(page);
    expect(page.text('.verdict')).to.equal('You expected 1.30 D @ 180°; the estimate is 1.00 D @ 180°. The difference is 0.30 D.');
    expect(page.eye.plan.incisionFlattening).to.equal(0.5);
    expect(texts(page).join()).to.equal('Half a dioptre less.');
  });

  it('takes the expectation from a marker that is dragged on the plane', async () => {
    const page = await walk(html`<astig-step>One.</astig-step><astig-step predict incision-site="180" incision-flattening="0.5">Two.</astig-step>`);
    page.at('.next').click();
    await until(() => page.at('.predict'), 'the question');
    await drawn(page.steps);
    const plane = page.at('.plane') as unknown as SVGSVGElement;
    await bringIntoView(plane);
    // Straight up on the plane is 45°; half of the radius is half of the greatest magnitude, 3 D.
    await dragMouse(centreOf(page.steps, '.marker'), onScreen(plane, 0, -70));
    await drawn(page.steps);
    page.at('.show').click();
    await settled(page);
    expect(page.text('.verdict')).to.match(/^You expected 1\.[45]\d D @ 45°; the estimate is 1\.00 D @ 180°\. The difference is 1\.8\d D\.$/);
  });

  it('lets nobody move the plan while a question is open, and the next button answers it first', async () => {
    const page = await walk(html`<astig-step incision-site="90">One.</astig-step><astig-step predict incision-site="180">Two.</astig-step><astig-step arc-site="0" arc-count="1">Three.</astig-step><astig-cornea></astig-cornea>`);
    const cornea = page.eye.querySelector('astig-cornea')!;
    const handle = (): boolean => cornea.shadowRoot!.querySelector('input.incision') !== null;
    await until(handle, 'the handle');
    page.at('.next').click();
    await until(() => page.at('.predict'), 'the question');
    await drawn(page.steps, cornea);
    expect([page.eye.readOnly, handle(), page.eye.plan.incisionSite]).to.deep.equal([true, false, 90]);
    page.at('.next').click();
    await settled(page);
    await drawn(cornea);
    expect([page.eye.readOnly, handle(), page.eye.plan.incisionSite, page.steps.step]).to.deep.equal([false, true, 180, 2]);
    expect(page.text('.verdict')).to.contain('You expected');
    expect(page.events.map(({ source }) => source).join()).to.equal('astig-steps next,astig-steps show');
  });

  it('has what shows other plans hide them while a question is open, on a case that is read-only too', async () => {
    const page = await walk(html`<astig-step incision-site="90">One.</astig-step><astig-step predict incision-site="180">Two.</astig-step><astig-sweep></astig-sweep><astig-options></astig-options>`);
    page.eye.readOnly = true;
    const views = [...page.eye.querySelectorAll<AstigSweep | AstigOptions>('astig-sweep, astig-options')];
    const shown = (): string => views.map(({ shadowRoot }) => `${shadowRoot!.querySelector('svg, table') !== null} ${/Not shown until|^\s*…\s*$/.test(shadowRoot!.textContent)}`).join();
    await until(() => shown() === 'true false,true false', 'the curve and the plans');
    page.at('.next').click();
    await until(() => page.at('.predict'), 'the question');
    await until(() => shown() === 'false true,false true', 'nothing of them');
    page.at('.show').click();
    await settled(page);
    await until(() => shown() === 'true false,true false', 'curve and plans again');
    page.at('.back').click();
    await settled(page);
    page.at('.next').click();
    await until(() => shown() === 'false true,false true', 'nothing of them');
    page.steps.remove();
    await until(() => page.eye.model.moves!.asking === false, 'nobody asks any more');
  });

  it('gives the lock back as it was when the reader goes back instead', async () => {
    const page = await walk(html`<astig-step>One.</astig-step><astig-step predict incision-site="180">Two.</astig-step>`);
    page.at('.next').click();
    await until(() => page.at('.predict'), 'the question');
    page.at('.back').click();
    await settled(page);
    expect([page.eye.readOnly, page.at('.predict') === null, page.text('.verdict')]).to.deep.equal([false, true, '']);
    page.eye.readOnly = true;
    page.at('.next').click();
    await until(() => page.at('.predict'), 'the question');
    page.at('.show').click();
    await settled(page);
    expect(page.eye.readOnly).to.equal(true);
  });

  it('says the answer of a question that the deck has passed over, and waits for an own fragment of it', async () => {
    const page = await walk(html`<astig-step>One.</astig-step><astig-step predict incision-site="180" incision-flattening="0.5"><span class="fragment">Two.</span></astig-step><astig-step arc-site="0" arc-count="1">Three.</astig-step>`);
    const [, second, third] = page.eye.querySelectorAll('astig-step');
    for (const step of [second!, third!]) step.classList.add('fragment');
    second!.classList.add('visible');
    await until(() => page.at('.predict'), 'the question');
    expect(page.eye.plan.incisionSite).to.equal(null);
    second!.querySelector('span')!.classList.add('visible');
    await settled(page);
    expect(page.text('.verdict')).to.contain('the estimate is 1.00 D @ 180°');
    expect(page.eye.plan.incisionSite).to.equal(180);
    for (const fragment of [second!, second!.querySelector('span')!]) fragment.classList.remove('visible');
    await settled(page);
    expect(page.eye.plan.incisionSite).to.equal(null);
    second!.classList.add('visible');
    await until(() => page.at('.predict'), 'the question again');
    third!.classList.add('visible');
    await settled(page);
    expect(page.eye.plan.arcCount).to.equal(1);
    expect(page.text('.verdict')).to.contain('the estimate is 1.00 D @ 180°');
  });

  it('is walked through a whole lesson by keyboard alone, with names, values and what is spoken', async () => {
    await emulate({ 'prefers-reduced-motion': 'reduce' });
    const page = await walk(html`<astig-step>One.</astig-step><astig-step incision-site="180" incision-flattening="0.5">Two.</astig-step><astig-step predict="And now?" incision-site="90">Three.</astig-step>`);
    const own = (): Element => page.steps.shadowRoot!.activeElement!;
    const spoken = (): string => page.text('nav [role=status]');
    expect(page.at('nav').getAttribute('aria-label')).to.equal('Steps');
    page.at('.back').focus();
    await press('Tab');
    expect([own().textContent.trim(), spoken()]).to.deep.equal(['Next', 'Step 1 of 3 One.']);
    await press('Enter');
    await settled(page);
    expect([spoken(), texts(page).join(), page.eye.outcome.after.magnitude.toFixed(2)]).to.deep.equal(['Step 2 of 3 Two.', 'Two.', '1.00']);
    await press('Enter');
    await until(() => page.at('.predict'), 'the question');
    await drawn(page.steps);
    expect([page.at('.predict').getAttribute('aria-label'), spoken(), texts(page).join()]).to.deep.equal(['And now?', 'Step 3 of 3 And now?', 'Two.']);
    for (const wanted of ['Show the result', 'Steep meridian 180°', 'Magnitude 1.00 D']) {
      while (!(own().closest('label') ?? own()).textContent.replaceAll(/[\s\u00a0]+/g, ' ').includes(wanted)) await press('Shift+Tab');
    }
    for (let count = 0; count < 10; count += 1) await press('ArrowRight');
    await drawn(page.steps);
    expect(own().getAttribute('aria-valuetext')).to.match(/^1\.50\sD$/);
    await press('Tab');
    await press('Tab');
    await press('Enter');
    await settled(page);
    expect(page.text('.verdict[role=status]')).to.equal('You expected 1.50 D @ 180°; the estimate is 2.00 D @ 180°. The difference is 0.50 D.');
    expect([spoken(), texts(page).join(), own().textContent.trim()]).to.deep.equal(['Step 3 of 3 Three.', 'Three.', 'Back']);
    await expect(page.steps).to.be.accessible();
  });
});
