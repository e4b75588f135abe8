import { expect, fixture, html } from '@open-wc/testing';
import fc from 'fast-check';
import type { AstigCase } from '../../components/case/case.js';
import { anyPlan, faults } from './label-faults.js';
import { drawn } from './support.js';

/** Widths at which the drawings are measured, CSS px: a phone, half a tablet, a wide page. */
const WIDTHS = [300, 420, 544];

const PLANS = 500;

describe('labels', () => {
  for (const tag of ['astig-cornea', 'astig-vectors', 'astig-sweep'] as const) {
    for (const width of WIDTHS) {
      it(`of ${tag} at ${width} px never overlap or clip, over ${PLANS} random plans`, async () => {
        const eye = await fixture<AstigCase>(html`<astig-case></astig-case>`);
        const view = document.createElement(tag);
        const box = document.createElement('div');
        box.setAttribute('style', `inline-size: ${width}px`);
        box.append(view);
        eye.append(box);
        await drawn(view);
        const drawing = view.shadowRoot!.querySelector('svg')!;
        expect(drawing.clientWidth).to.equal(width);
        const bad: string[] = [];
        let seen = 0;
        for (const plan of fc.sample(anyPlan, { numRuns: PLANS, seed: 20_251 })) {
          eye.plan = plan;
          await eye.updateComplete;
          await view.updateComplete;
          seen += drawing.querySelectorAll('text').length;
          bad.push(...faults(drawing).map((fault) => `${fault}: ${JSON.stringify(plan)}`));
        }
        expect(bad.slice(0, 5)).to.deep.equal([]);
        expect(seen).to.be.above(PLANS * 12);
      }).timeout(60_000);
    }
  }

  it('finds a fault where there is one', async () => {
    const drawing = await fixture<SVGSVGElement>(html`<svg width="100" height="50"><text x="5" y="20">one</text><text x="10" y="22">two</text><text x="90" y="40">three</text></svg>`);
    expect(faults(drawing).map((fault) => fault.replace(/ \(.*?\)/g, ''))).to.deep.equal(['“one” and “two” overlap', '“three” is clipped']);
  });
});
