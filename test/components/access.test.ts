import { expect, fixture, html } from '@open-wc/testing';
import type { AstigCase } from '../../components/case/case.js';
import { INVENTED_SLIPS, inventedResults } from '../../stories/results.js';
import { emulate, itInEveryScheme, itWith } from '../engine.js';
import { settled } from './outcomes-support.js';
import { CEDAR, drawn, press } from './support.js';
import { systemColours } from './system-colours.js';

const TAGS = ['astig-cornea', 'astig-vectors', 'astig-summary', 'astig-entry', 'astig-sweep', 'astig-options', 'astig-sight', 'astig-explain', 'astig-sheet', 'astig-pencil', 'astig-steps', 'astig-outcomes'] as const;

async function whole(plan: object = {}): Promise<AstigCase> {
  const eye = await fixture<AstigCase>(html`<astig-case .plan=${{ ...CEDAR, lensCylinder: 1, lensMeridian: 10, ...plan }}>
    <astig-cornea></astig-cornea><astig-vectors></astig-vectors><astig-summary></astig-summary><astig-entry></astig-entry>
    <astig-sweep></astig-sweep><astig-options></astig-options><astig-sight></astig-sight><astig-explain></astig-explain><astig-sheet></astig-sheet><astig-pencil></astig-pencil>
    <astig-steps><astig-step>One.</astig-step><astig-step>Two.</astig-step></astig-steps>
    <astig-outcomes .data=${`${inventedResults(25)}\n${INVENTED_SLIPS}`}></astig-outcomes>
    <astig-cornea map="difference"></astig-cornea>
  </astig-case>`);
  await drawn(...TAGS.flatMap((tag) => [...eye.querySelectorAll(tag)] as unknown as { updateComplete: Promise<boolean> }[]));
  await settled(eye.querySelector('astig-outcomes')!);
  return eye;
}

describe('accessibility', () => {
  afterEach(() => emulate({}));

  itInEveryScheme('has no fault that axe can find', async () => {
    const eye = await whole({ arcDepth: 640 });
    await expect(eye).to.be.accessible();
  });

  it('has no fault with refused settings and read-only', async () => {
    const eye = await whole();
    eye.setAttribute('incision-width', '9');
    eye.readOnly = true;
    await drawn(eye);
    await expect(eye).to.be.accessible();
  });

  it('gives every control of the cornea a name, a value with its unit, and limits', async () => {
    const eye = await whole();
    const inputs = [...eye.querySelector('astig-cornea')!.shadowRoot!.querySelectorAll('input')];
    expect(inputs.map((input) => input.getAttribute('aria-label'))).to.deep.equal(['Site of the incision', 'Site of the relaxing arc', 'Length of the relaxing arc', 'Meridian of the toric lens']);
    for (const input of inputs) {
      expect(input.getAttribute('aria-valuetext')).to.match(/degrees/);
      expect([Number(input.min), Number(input.max)].every(Number.isFinite)).to.equal(true);
    }
  });

  it('keeps the focus in the drawing when the control under it goes away', async () => {
    const eye = await whole();
    const cornea = eye.querySelector('astig-cornea')!;
    cornea.shadowRoot!.querySelector<HTMLInputElement>('input.incision')!.focus();
    await press('ArrowRight');
    eye.incisionSite = null;
    await drawn(cornea);
    expect(cornea.shadowRoot!.activeElement).to.not.equal(null);
  });

  it('measures at least 44 px for every handle, on a phone too', async () => {
    const eye = await whole();
    const cornea = eye.querySelector('astig-cornea')!;
    cornea.setAttribute('style', 'inline-size: 300px');
    await drawn(cornea);
    const hits = [...cornea.shadowRoot!.querySelectorAll('.hit')];
    expect(hits).to.have.length(5);
    for (const hit of hits) expect(hit.getBoundingClientRect().width).to.be.at.least(44);
  });

  itWith('forced colours', 'shows handles and lines in forced colours with the colours of the system only', async () => {
    await emulate({ 'forced-colors': 'active' });
    const eye = await whole();
    const root = eye.querySelector('astig-cornea')!.shadowRoot!;
    const system = systemColours();
    for (const selector of ['.entry', '[part~="arc"]', '[part~="lens-axis"]', '.knob', '[part~="limbus"]']) {
      expect(system, selector).to.include(getComputedStyle(root.querySelector(selector)!).stroke);
    }
  });
});
