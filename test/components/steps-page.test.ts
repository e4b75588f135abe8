import { expect, fixture, html } from '@open-wc/testing';
import type { AstigCase } from '../../components/case/case.js';
import { asBefore, settled, walk } from './steps-support.js';
import { drawn, until } from './support.js';

describe('astig-steps and the page they lie on', () => {
  afterEach(asBefore);

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

  it('leaves what is inside in the language of the page', async () => {
    const root = await fixture(html`<div lang="de"><astig-steps><astig-case flat-k="43" steep-k="44" steep-meridian="90"><astig-step>Eins.</astig-step><astig-cornea></astig-cornea></astig-case></astig-steps></div>`);
    const text = (selector: string, inner: string): string => root.querySelector(selector)!.shadowRoot!.querySelector(inner)?.textContent ?? '';
    await until(() => text('astig-steps', '.next') === 'Weiter', 'the button in German');
    await until(() => text('astig-cornea', 'figcaption').includes('Von vorn'), 'the caption in German');
  });
});
