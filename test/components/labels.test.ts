import { expect, fixture, html } from '@open-wc/testing';
import fc from 'fast-check';
import { LIMITS } from '../../core/index.js';
import type { EyePlan } from '../../core/index.js';
import type { AstigCase } from '../../components/case/case.js';
import { inkBox } from './ink.js';
import { drawn } from './support.js';

/** Widths at which the drawings are measured, CSS px: a phone, half a tablet, a wide page. */
const WIDTHS = [300, 420, 544];

/** How far two boxes may touch before it counts, CSS px: less than the finest stroke of a letter. */
const TOUCH = 0.5;

const PLANS = 500;

const within = (field: keyof typeof LIMITS): fc.Arbitrary<number> => fc.integer({ min: LIMITS[field].min * 10, max: LIMITS[field].max * 10 }).map((n) => n / 10);

const anyPlan: fc.Arbitrary<EyePlan> = fc.record({
  eye: fc.constantFrom('right' as const, 'left' as const),
  flatK: fc.integer({ min: 40, max: 43 }),
  steepK: fc.integer({ min: 4300, max: 4800 }).map((n) => n / 100),
  steepMeridian: fc.integer({ min: 1, max: 180 }),
  backSurface: fc.constantFrom('omitted' as const, 'typical' as const, '0.5@90' as const),
  incisionSite: fc.option(fc.integer({ min: 0, max: 359 })),
  incisionWidth: within('incisionWidth'),
  arcSite: fc.integer({ min: 0, max: 359 }),
  arcLength: within('arcLength'),
  arcCount: fc.constantFrom(0 as const, 1 as const, 2 as const),
  lensCylinder: fc.option(fc.integer({ min: 5, max: 40 }).map((n) => n / 10)),
  lensMeridian: fc.integer({ min: 1, max: 180 }),
});

/** What is wrong with the labels of a drawing: pairs that overlap, and labels that leave the drawing. */
function faults(drawing: SVGSVGElement): string[] {
  const edge = drawing.getBoundingClientRect();
  const labels = [...drawing.querySelectorAll('text')].map((text) => ({ text: text.textContent, box: inkBox(text) }));
  const found: string[] = [];
  labels.forEach(({ text, box }, index) => {
    if (box.left < edge.left - TOUCH || box.right > edge.right + TOUCH || box.top < edge.top - TOUCH || box.bottom > edge.bottom + TOUCH) {
      found.push(`“${text}” is clipped`);
    }
    for (const other of labels.slice(index + 1)) {
      const apart =
        box.right <= other.box.left + TOUCH || other.box.right <= box.left + TOUCH || box.bottom <= other.box.top + TOUCH || other.box.bottom <= box.top + TOUCH;
      if (!apart) found.push(`“${text}” and “${other.text}” overlap`);
    }
  });
  return found;
}

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
    expect(faults(drawing)).to.deep.equal(['“one” and “two” overlap', '“three” is clipped']);
  });
});
