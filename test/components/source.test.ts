import { expect, fixture, html } from '@open-wc/testing';
import { FIGURES, references } from '../../core/index.js';
import type { AstigCase } from '../../components/case/case.js';
import { CEDAR, drawn, listen, press, until } from './support.js';

async function page(): Promise<{ eye: AstigCase; root: (tag: string) => ShadowRoot }> {
  const eye = await fixture<AstigCase>(html`<astig-case .plan=${{ ...CEDAR, backSurface: 'typical' }}><astig-cornea></astig-cornea><astig-vectors></astig-vectors><astig-summary></astig-summary></astig-case>`);
  const root = (tag: string): ShadowRoot => eye.querySelector(tag)!.shadowRoot!;
  await drawn(eye.querySelector('astig-cornea')!, eye.querySelector('astig-vectors')!, eye.querySelector('astig-summary')!);
  return { eye, root };
}

async function opened(root: ShadowRoot): Promise<HTMLElement> {
  const popover = (): HTMLElement | null => root.querySelector<HTMLElement>('.source:popover-open');
  await until(() => popover() !== null, 'the source');
  return popover()!;
}

describe('where a figure comes from', () => {
  it('opens by keyboard with formula, constants, references, and whether they were read; Escape closes it and gives the focus back', async () => {
    const { eye, root } = await page();
    const log = listen(eye);
    const button = root('astig-summary').querySelector<HTMLElement>('[data-source="arcs"] .sourced')!;
    button.focus();
    await press('Enter');
    const popover = await opened(root('astig-summary'));
    const text = popover.textContent;
    for (const part of [FIGURES.arcs.title, FIGURES.arcs.formula, FIGURES.arcs.range, 'Roberts', 'Figures read', 'teaching estimate', 'validated on none', '0.5']) expect(text).to.contain(part);
    await press('Escape');
    expect(popover.matches(':popover-open')).to.equal(false);
    expect(root('astig-summary').activeElement === button).to.equal(true);
    expect([log.inputs.length, log.changes.length]).to.deep.equal([0, 0]);
  });

  it('opens for every figure of the summary', async () => {
    const { root } = await page();
    const buttons = [...root('astig-summary').querySelectorAll<HTMLElement>('.sourced')];
    expect(buttons.length).to.be.at.least(9);
    const seen = new Set<string>();
    for (const button of buttons) {
      button.click();
      const popover = await opened(root('astig-summary'));
      seen.add(popover.textContent.trim());
      popover.hidePopover();
    }
    expect(seen.size).to.be.at.least(7);
  });

  it('does not open, nor take the focus, where the reader has gone on to something else while it is loaded', async () => {
    const { eye, root } = await page();
    const field = document.createElement('input');
    eye.append(field);
    const button = root('astig-summary').querySelector<HTMLElement>('[data-source="arcs"] .sourced')!;
    button.focus();
    button.click();
    field.focus();
    await until(() => root('astig-summary').querySelector('.source') !== null, 'the answer is loaded');
    await drawn(eye.querySelector('astig-summary')!);
    await new Promise(requestAnimationFrame);
    expect([document.activeElement === field, root('astig-summary').querySelector('.source:popover-open') === null]).to.deep.equal([true, true]);
    button.focus();
    button.click();
    expect((await opened(root('astig-summary'))).textContent).to.contain(FIGURES.arcs.title);
  });

  it('opens for an arrow of the diagram, by keyboard', async () => {
    const { root } = await page();
    root('astig-vectors').querySelector<SVGElement>('[data-source="incision"]')!.focus();
    await press('Enter');
    expect((await opened(root('astig-vectors'))).textContent).to.contain(FIGURES.incision.title);
  });

  it('names the source of a caution', async () => {
    const { root } = await page();
    root('astig-summary').querySelector<HTMLElement>('[part="caution"] .sourced')!.click();
    const text = (await opened(root('astig-summary'))).textContent;
    expect(Object.values(references).some(({ title }) => text.includes(title))).to.equal(true);
  });

  it('says when the surgeon’s own figure is shown', async () => {
    const { eye, root } = await page();
    eye.ownFigures = { arcs: { share: 0.7, sdAlong: 0.3, sdAcross: 0.3 } };
    await drawn(eye.querySelector('astig-summary')!);
    root('astig-summary').querySelector<HTMLElement>('[data-source="arcs"] .sourced')!.click();
    expect((await opened(root('astig-summary'))).textContent).to.contain('own figure');
  });
});
