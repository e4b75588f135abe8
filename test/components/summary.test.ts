import { expect, fixture, html } from '@open-wc/testing';
import type { AstigCase } from '../../components/case/case.js';
import type { AstigSummary } from '../../components/summary/summary.js';
import { CEDAR, bringIntoView, centreOf, dragMouse, drawn, onEye, press } from './support.js';
import { sendMouse } from '@web/test-runner-commands';

async function summary(plan: object = {}): Promise<{ eye: AstigCase; view: AstigSummary; text: (part: string) => string; spoken: () => string }> {
  const eye = await fixture<AstigCase>(html`<astig-case .plan=${{ ...CEDAR, ...plan }}><astig-summary></astig-summary><astig-cornea></astig-cornea></astig-case>`);
  const view = eye.querySelector('astig-summary')!;
  await drawn(view, eye.querySelector('astig-cornea')!);
  const text = (part: string): string => (view.shadowRoot!.querySelector(`[part~="${part}"]`)?.textContent ?? '').replace(/\s+/g, ' ').trim();
  return { eye, view, text, spoken: () => view.shadowRoot!.querySelector('[aria-live]')!.textContent.replaceAll('\u00a0', ' ') };
}

describe('astig-summary', () => {
  it('says before, each step, and what remains, expected and intended', async () => {
    const { text } = await summary();
    expect(text('before')).to.contain('right eye').and.contain('1.00 D @ 180°').and.contain('against the rule');
    expect(text('after')).to.contain('0.28 D @ 180°');
    expect(text('intended')).to.contain('0.23 D @ 90°').and.contain('with the rule');
    expect(text('steps')).to.contain('flattens 180° by 0.22 D').and.contain('flattens 180° by 0.50 D').and.contain('flattens 180° by 1.01 D');
    expect(text('steps')).to.contain('Mean corneal power');
  });

  it('never calls what remains “left”, which is the name of an eye', async () => {
    const { view } = await summary();
    expect(view.shadowRoot!.textContent).to.not.match(/\bleft\b/i);
  });

  it('lists cautions with level and source', async () => {
    const { view, text } = await summary({ arcDepth: 600, localThickness: 650 });
    const first = view.shadowRoot!.querySelector('[part="caution"]')!;
    expect(first.getAttribute('data-id')).to.equal('arc-too-deep');
    expect(first.getAttribute('data-level')).to.equal('stop');
    expect(text('caution')).to.match(/^Stop: 600 µm is 92 % .* Source$/);
  });

  it('says that the figures are estimates and who decides', async () => {
    const { view } = await summary();
    expect(view.shadowRoot!.textContent).to.contain('Estimates').and.contain('licensed judgement decide');
  });

  it('speaks politely after a change, not at the start and not while dragging', async () => {
    const { eye, view, spoken } = await summary();
    const cornea = eye.querySelector('astig-cornea')!;
    expect(spoken()).to.equal('');
    await bringIntoView(cornea);
    await dragMouse(centreOf(cornea, '[part~="incision-handle"]'), onEye(cornea, 90, 6.75), { hold: true });
    await drawn(view);
    expect(spoken()).to.equal('');
    await sendMouse({ type: 'up' });
    await drawn(view);
    expect(spoken()).to.match(/^Expected to remain: \d\.\d\d D at \d+°\./);
    const before = spoken();
    cornea.shadowRoot!.querySelector<HTMLInputElement>('input.incision')!.focus();
    await press('PageUp');
    await drawn(view);
    expect(spoken()).to.not.equal(before);
  });

  it('shows what the page has set wrong, field, value and limits', async () => {
    const { eye, view, text } = await summary();
    eye.setAttribute('arc-length', 'long');
    await drawn(view);
    expect(text('refused')).to.contain('arcLength').and.contain('“long”').and.contain('15 to 120');
    expect(text('after')).to.contain('0.28 D');
    eye.setAttribute('arc-length', '30');
    await drawn(view);
    expect(text('refused')).to.equal('');
  });

  it('tells the chance in words and as a hundred dots, always of 100', async () => {
    const { eye, view, text } = await summary();
    const eyes = Math.round(100 * eye.outcome.chanceWithin(0.5));
    expect(text('chance')).to.contain(`About ${eyes} of 100 eyes like this would end with 0.50 D or less.`);
    expect(view.shadowRoot!.querySelectorAll('.dots .full')).to.have.length(eyes);
    expect(view.shadowRoot!.querySelectorAll('.dots circle')).to.have.length(100);
    expect(view.shadowRoot!.textContent).to.not.match(/\b1 (in|of|out of) \d/);
    eye.ownFigures = { arcs: { share: 0.9, sdAlong: 0.05, sdAcross: 0.05 } };
    await drawn(view);
    expect(view.shadowRoot!.querySelectorAll('.dots .full').length).to.be.above(eyes);
  });

  it('says where the surgeon’s own figures stand in place of the model', async () => {
    const { eye, view } = await summary();
    const marked = (): (string | null)[] => [...view.shadowRoot!.querySelectorAll('.own')].map((mark) => mark.closest('tr')!.getAttribute('data-source'));
    expect(marked()).to.deep.equal([]);
    eye.ownFigures = { incision: { flattening: 0.4, sd: 0.2 } };
    await drawn(view);
    expect(marked()).to.deep.equal(['incision']);
    expect(view.shadowRoot!.querySelector('[data-source="incision"]')!.textContent).to.contain('0.40');
  });

  it('takes markup in attributes as text', async () => {
    const { eye, view, text } = await summary();
    eye.setAttribute('eye', '<img src=x>');
    await drawn(view);
    expect(view.shadowRoot!.querySelector('img')).to.equal(null);
    expect(text('refused')).to.contain('<img src=x>');
  });
});
