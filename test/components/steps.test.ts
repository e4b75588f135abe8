import { expect, html } from '@open-wc/testing';
import { emulate } from '../engine.js';
import { asBefore, settled, texts, walk } from './steps-support.js';
import { listen, press, until } from './support.js';

describe('astig-steps', () => {
  afterEach(asBefore);

  it('shows what each step names and, going back, exactly what was there', async () => {
    const page = await walk();
    const measured = JSON.stringify(page.eye.plan);
    page.at('.next').click();
    await settled(page);
    const entry = JSON.stringify(page.eye.plan);
    expect(page.eye.plan.incisionSite).to.equal(180);
    expect(page.eye.plan.incisionWidth).to.equal(2.8);
    expect(page.eye.plan.incisionFlattening).to.equal(null);
    page.at('.next').click();
    await settled(page);
    expect(page.eye.plan.arcCount).to.equal(2);
    expect(page.eye.plan.incisionSite, 'adds to the step before').to.equal(180);
    expect(texts(page).join()).to.equal('Two arcs.');
    page.at('.back').click();
    await settled(page);
    expect(JSON.stringify(page.eye.plan)).to.equal(entry);
    page.at('.back').click();
    await settled(page);
    expect(JSON.stringify(page.eye.plan)).to.equal(measured);
    expect(page.events.map(({ step, count, source }) => `${step}/${count} ${source}`).join(', ')).to.equal(
      '2/3 astig-steps next, 3/3 astig-steps next, 2/3 astig-steps back, 1/3 astig-steps back',
    );
  });

  it('glides: the remainder moves little by little, without an event and without speaking on the way', async () => {
    const page = await walk();
    const log = listen(page.eye);
    const start = page.eye.outcome.after.magnitude;
    const status = page.eye.querySelector('astig-summary')!.shadowRoot!.querySelector('[aria-live]')!;
    let spokenOnTheWay = '';
    page.steps.step = 3;
    const seen: number[] = [];
    await page.steps.updateComplete;
    while (page.eye.model.moving) {
      seen.push(page.eye.outcome.after.magnitude);
      spokenOnTheWay += status.textContent.trim();
      await new Promise(requestAnimationFrame);
    }
    await settled(page);
    const end = page.eye.outcome.after.magnitude;
    expect(seen.filter((value) => value < start - 0.01 && value > end + 0.01).length).to.be.greaterThan(3);
    expect(spokenOnTheWay).to.equal('');
    expect(status.textContent).to.not.equal('');
    expect(log.inputs.length + log.changes.length + page.events.length).to.equal(0);
  });

  it('jumps where less motion is wanted', async () => {
    await emulate({ 'prefers-reduced-motion': 'reduce' });
    const page = await walk();
    page.steps.step = 3;
    await page.steps.updateComplete;
    expect(page.eye.model.moving).to.equal(false);
    expect(page.eye.plan.arcCount).to.equal(2);
  });

  it('shows which button leads nowhere', async () => {
    const page = await walk();
    const looks = (): string => ['.back', '.next'].map((button) => `${page.at(button).getAttribute('aria-disabled')} ${getComputedStyle(page.at(button)).borderTopStyle}`).join();
    expect(looks()).to.equal('true dashed,false solid');
    page.steps.step = 3;
    await settled(page);
    expect(looks()).to.equal('false solid,true dashed');
  });

  it('is walked by keys, which at either end are the page’s', async () => {
    const page = await walk();
    const passed: string[] = [];
    const note = (event: KeyboardEvent): void => void passed.push(event.key);
    document.addEventListener('keydown', note);
    page.at('.next').focus();
    for (const key of ['ArrowRight', 'PageDown', 'ArrowRight', 'ArrowLeft', 'PageUp', 'ArrowLeft']) {
      await press(key);
      await settled(page);
    }
    document.removeEventListener('keydown', note);
    expect(page.events.map(({ step }) => step).join()).to.equal('2,3,2,1');
    expect(passed.join()).to.equal('ArrowRight,ArrowLeft');
  });

  it('says what of a step is refused, and keeps the last good plan', async () => {
    const page = await walk(html`<astig-step>One.</astig-step><astig-step incision-site="180" incision-width="28">Too wide.</astig-step>`);
    page.at('.next').click();
    await settled(page);
    expect(page.text('[part~="refused"]')).to.contain('28').and.contain('3.5');
    expect(page.eye.plan.incisionWidth).to.equal(2.4);
    page.at('.back').click();
    await settled(page);
    expect(page.eye.refusals.length).to.equal(0);
  });

  it('does not take what the reader moves as a new start', async () => {
    const page = await walk(html`<astig-step incision-site="180">One.</astig-step><astig-step arc-site="0" arc-count="1">Two.</astig-step><astig-cornea></astig-cornea>`);
    const cornea = page.eye.querySelector('astig-cornea')!;
    await until(() => cornea.shadowRoot!.querySelector('input.incision'), 'the handle');
    cornea.shadowRoot!.querySelector<HTMLElement>('input.incision')!.focus();
    await press('ArrowRight');
    expect(page.eye.plan.incisionSite).to.not.equal(180);
    page.at('.next').click();
    await settled(page);
    expect(page.eye.plan.incisionSite).to.equal(180);
  });
});
