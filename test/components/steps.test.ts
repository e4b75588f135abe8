import { expect, fixture, html } from '@open-wc/testing';
import type { AstigCase } from '../../components/case/case.js';
import type { AstigStepEvent } from '../../components/steps/steps.event.js';
import type { AstigSteps } from '../../components/steps/steps.js';
import { emulate } from '../engine.js';
import { bringIntoView, centreOf, drawn, listen, onScreen, dragMouse, press, until } from './support.js';

interface Walk {
  eye: AstigCase;
  steps: AstigSteps;
  at: (name: string) => HTMLElement;
  text: (selector: string) => string;
  events: AstigStepEvent[];
}

/** Invented: 1.50 D against the rule, an entry on the steep meridian, then a pair of arcs. */
async function walk(inner = html`<astig-step id="start">As measured.</astig-step>
  <astig-step incision-site="180" incision-width="2.8">The entry.</astig-step>
  <astig-step arc-site="0" arc-count="2" arc-length="40">Two arcs.</astig-step>`): Promise<Walk> {
  const eye = await fixture<AstigCase>(html`<astig-case flat-k="42.5" steep-k="44" steep-meridian="180" age="70">
    <astig-steps id="lesson">${inner}<astig-vectors></astig-vectors><astig-summary></astig-summary></astig-steps>
  </astig-case>`);
  const steps = eye.querySelector('astig-steps')!;
  const at = (selector: string): HTMLElement => steps.shadowRoot!.querySelector<HTMLElement>(selector)!;
  const events: AstigStepEvent[] = [];
  eye.addEventListener('astig-step', (event) => events.push(event));
  await until(() => at('nav') ?? at('[part~="refused"]'), 'the bar');
  await drawn(steps, ...eye.querySelectorAll('astig-step'));
  return { eye, steps, at, text: (selector) => at(selector)?.textContent.replaceAll(/[\s\u00a0]+/g, ' ').trim() ?? '', events };
}

function texts({ eye }: Walk): string[] {
  return [...eye.querySelectorAll('astig-step')].filter((step) => !step.shadowRoot!.querySelector('.off')).map((step) => step.textContent.trim());
}

async function settled({ eye, steps }: Walk): Promise<void> {
  await drawn(steps);
  await until(() => !eye.model.moving, 'the end of the movement');
  await drawn(steps, ...eye.querySelectorAll('astig-step'));
}

describe('astig-steps', () => {
  afterEach(async () => {
    history.replaceState(null, '', location.pathname + location.search);
    await emulate({ 'prefers-reduced-motion': 'no-preference' });
  });

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

  it('follows the address, and writes it only when asked to', async () => {
    const page = await walk();
    location.hash = '#lesson-2';
    await until(() => page.steps.step === 2, 'the step of the address');
    page.at('.next').click();
    await settled(page);
    expect(location.hash).to.equal('#lesson-2');
    const length = history.length;
    page.steps.writeAddress = true;
    await settled(page);
    expect(location.hash).to.equal('#lesson-3');
    page.at('.back').click();
    await settled(page);
    page.at('.back').click();
    await settled(page);
    expect(location.hash).to.equal('#start');
    expect(history.length).to.equal(length);
  });

  it('follows the fragments of a deck, and leaves the buttons to it', async () => {
    const page = await walk(html`<astig-step>One.</astig-step><astig-step incision-site="180">Two.</astig-step>`);
    const [, second] = page.eye.querySelectorAll('astig-step');
    second!.classList.add('fragment');
    await settled(page);
    expect(page.at('nav') === null).to.equal(true);
    second!.classList.add('visible');
    await settled(page);
    expect(page.eye.plan.incisionSite).to.equal(180);
    second!.classList.remove('visible');
    await settled(page);
    expect(page.eye.plan.incisionSite).to.equal(null);
    expect(page.events.length).to.equal(0);
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

  it('starts from another eye that the host page sets, and shows the same step of it', async () => {
    const page = await walk();
    page.at('.next').click();
    await settled(page);
    page.eye.steepK = 46;
    await settled(page);
    expect([page.eye.plan.steepK, page.eye.plan.incisionSite, page.steps.step]).to.deep.equal([46, 180, 2]);
    page.at('.back').click();
    await settled(page);
    expect([page.eye.plan.steepK, page.eye.plan.incisionSite]).to.deep.equal([46, null]);
    page.eye.plan = { flatK: 41, steepK: 45, steepMeridian: 20 };
    await settled(page);
    page.at('.next').click();
    // While it glides.
    await page.steps.updateComplete;
    page.eye.setAttribute('flat-k', '40');
    await settled(page);
    expect([page.eye.plan.flatK, page.eye.plan.steepK, page.eye.plan.steepMeridian, page.eye.plan.incisionSite, page.eye.plan.incisionWidth]).to.deep.equal([40, 45, 20, 180, 2.8]);
    page.at('.back').click();
    await settled(page);
    expect([page.eye.plan.flatK, page.eye.plan.steepK, page.eye.plan.incisionSite]).to.deep.equal([40, 45, null]);
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

  it('puts every step with its text and its pictures on paper, and takes them away again', async () => {
    const page = await walk();
    await until(() => (dispatchEvent(new Event('beforeprint')), page.at('.sequence')), 'the sequence');
    const sections = [...page.steps.shadowRoot!.querySelectorAll('.sequence > section')];
    expect(sections.map((section) => section.querySelector('div')!.textContent.trim()).join()).to.equal('As measured.,The entry.,Two arcs.');
    expect(sections.map((section) => section.querySelectorAll('astig-vectors').length).join()).to.equal('1,1,1');
    await drawn(...sections.map((section) => section.querySelector('astig-vectors')!));
    const shown = sections.map((section) => (section.querySelector('astig-case') as AstigCase).plan).map(({ incisionSite, arcCount, arcSite }) => `${incisionSite} ${arcSite === null ? 0 : arcCount}`);
    expect(shown.join()).to.equal('null 0,180 0,180 2');
    expect(sections.every((section) => section.querySelector('astig-vectors')!.shadowRoot!.querySelector('svg') !== null)).to.equal(true);
    dispatchEvent(new Event('afterprint'));
    await drawn(page.steps);
    expect(page.at('.sequence') === null).to.equal(true);
  });

  it('is walked through a whole lesson by keyboard alone, with names, values and what is spoken', async () => {
    await emulate({ 'prefers-reduced-motion': 'reduce' });
    const page = await walk(html`<astig-step>One.</astig-step><astig-step incision-site="180" incision-flattening="0.5">Two.</astig-step><astig-step predict="And now?" incision-site="90">Three.</astig-step>`);
    const own = (): Element => page.steps.shadowRoot!.activeElement!;
    const spoken = (): string => page.text('nav [role=status]');
    expect(page.at('nav').getAttribute('aria-label')).to.equal('Steps');
    page.at('.back').focus();
    await press('Tab');
    expect([own().textContent.trim(), spoken()]).to.deep.equal(['Next', 'Step 1 of 3']);
    await press('Enter');
    await settled(page);
    expect([spoken(), texts(page).join(), page.eye.outcome.after.magnitude.toFixed(2)]).to.deep.equal(['Step 2 of 3', 'Two.', '1.00']);
    await press('Enter');
    await until(() => page.at('.predict'), 'the question');
    await drawn(page.steps);
    expect([page.at('.predict').getAttribute('aria-label'), spoken(), texts(page).join()]).to.deep.equal(['And now?', 'Step 3 of 3', 'Two.']);
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
    expect([spoken(), texts(page).join(), own().textContent.trim()]).to.deep.equal(['Step 3 of 3', 'Three.', 'Back']);
    await expect(page.steps).to.be.accessible();
  });

  it('leaves what is inside in the language of the page', async () => {
    const root = await fixture(html`<div lang="de"><astig-steps><astig-case flat-k="43" steep-k="44" steep-meridian="90"><astig-step>Eins.</astig-step><astig-cornea></astig-cornea></astig-case></astig-steps></div>`);
    const text = (selector: string, inner: string): string => root.querySelector(selector)!.shadowRoot!.querySelector(inner)?.textContent ?? '';
    await until(() => text('astig-steps', '.next') === 'Weiter', 'the button in German');
    await until(() => text('astig-cornea', 'figcaption').includes('Von vorn'), 'the caption in German');
  });
});
