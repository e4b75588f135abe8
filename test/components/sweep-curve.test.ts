import { expect, fixture, html } from '@open-wc/testing';
import fc from 'fast-check';
import { LIMITS, chanceWithin, completePlan, evaluatePlan, site } from '../../core/index.js';
import type { CompletePlan, EyePlan } from '../../core/index.js';
import { bandAt, sweepDependsOn, sweepOf } from '../../components/sweep/sweep.parts.js';
import { itInEveryScheme } from '../engine.js';
import { inkBox } from './ink.js';
import { CEDAR, drawn, until } from './support.js';
import { drawnCurve, sweepFixture } from './sweep-support.js';

const within = (field: keyof typeof LIMITS): fc.Arbitrary<number> => fc.integer({ min: LIMITS[field].min * 10, max: LIMITS[field].max * 10 }).map((n) => n / 10);

const anyPlan: fc.Arbitrary<EyePlan> = fc.record({
  eye: fc.constantFrom('right' as const, 'left' as const),
  flatK: fc.integer({ min: 40, max: 43 }),
  steepK: fc.integer({ min: 4300, max: 4800 }).map((n) => n / 100),
  steepMeridian: fc.integer({ min: 1, max: 180 }),
  backSurface: fc.constantFrom('omitted' as const, 'typical' as const, '0.5@90' as const),
  incisionSite: fc.option(fc.integer({ min: 0, max: 359 })),
  incisionWidth: within('incisionWidth'),
  incisionFlattening: fc.option(fc.integer({ min: -10, max: 30 }).map((n) => n / 10), { freq: 3 }),
  arcSite: fc.integer({ min: 0, max: 359 }),
  arcLength: within('arcLength'),
  arcCount: fc.constantFrom(0 as const, 1 as const, 2 as const),
  lensCylinder: fc.option(fc.integer({ min: 5, max: 40 }).map((n) => n / 10)),
  lensMeridian: fc.integer({ min: 1, max: 180 }),
});

const plans = (numRuns: number): CompletePlan[] => fc.sample(anyPlan, { numRuns, seed: 20_251 }).map(completePlan);

const remainingAt = (plan: CompletePlan, degrees: number): number => evaluatePlan({ ...plan, incisionSite: degrees }).after.magnitude;

describe('astig-sweep: figures', () => {
  it('draws at every corner of the curve what evaluatePlan says of that site', async () => {
    const { eye, root } = await sweepFixture({ plan: { steepMeridian: 20, backSurface: 'typical' } });
    const curve = drawnCurve(root);
    expect(curve.length).to.be.above(140);
    expect(curve.at(-1)!.site).to.be.closeTo(360, 0.01);
    for (const { site: at, dioptres } of curve) expect(dioptres, String(at)).to.be.closeTo(remainingAt(eye.plan, site(at)), 0.003);
  });

  it('has the value of evaluatePlan at its own sites, and between them within 0.01 D', () => {
    for (const plan of plans(60)) {
      const { curve } = sweepOf(plan, false);
      curve.forEach(({ site: at, remaining }, index) => {
        expect(remaining).to.equal(remainingAt(plan, at));
        const next = curve[index + 1];
        if (!next || plan.incisionFlattening !== null) return;
        expect(Math.abs((remaining + next.remaining) / 2 - remainingAt(plan, (at + next.site) / 2))).to.be.below(0.01);
      });
    }
  });

  it('finds the best whole degree that trying all 360 finds', () => {
    for (const plan of plans(200)) {
      const every = Array.from({ length: 360 }, (_, degrees) => remainingAt(plan, degrees));
      const least = Math.min(...every);
      const { best } = sweepOf(plan, false);
      if (Math.max(...every) - least < 0.006) continue;
      expect(best[0]!.remaining, JSON.stringify(plan)).to.be.closeTo(least, 1e-9);
      for (const { site: at, remaining } of best) expect(remaining).to.equal(every[at]);
    }
  });

  it('names no best site where the incision does nothing, and both where two do the same', () => {
    const plan = completePlan({ ...CEDAR, arcCount: 0 });
    expect(sweepOf({ ...plan, incisionFlattening: 0 }).best).to.deep.equal([]);
    expect(sweepOf({ ...plan, incisionFlattening: 0.4 }).best.map(({ site: at }) => at)).to.deep.equal([0, 180]);
  });

  it('holds half of all eyes in its band: quartiles at its own sites and between them', () => {
    for (const plan of plans(60)) {
      const { band } = sweepOf(plan);
      for (let degrees = 0; degrees < 360; degrees += 3) {
        const { spread } = evaluatePlan({ ...plan, incisionSite: degrees });
        const { low, high } = bandAt(band, degrees)!;
        expect(chanceWithin(spread, low), `${degrees} ${JSON.stringify(plan)}`).to.be.closeTo(0.25, 0.01);
        expect(chanceWithin(spread, high)).to.be.closeTo(0.75, 0.01);
      }
    }
  });

  it('is calculated anew for every change of the plan but the site of the incision', () => {
    const plan = completePlan(CEDAR);
    const key = sweepDependsOn(plan, true);
    expect(sweepDependsOn({ ...plan, incisionSite: 12 }, true)).to.equal(key);
    expect(sweepDependsOn({ ...plan, incisionSite: null }, true)).to.equal(key);
    expect(sweepDependsOn(plan, false)).to.not.equal(key);
    const changes: EyePlan[] = [{ arcLength: 31 }, { eye: 'left' }, { incisionWidth: 2.4 }, { risks: 'dry-eye' }, { ownFigures: { incision: { flattening: 0.3, sd: 0.2 } } }];
    for (const change of changes) expect(sweepDependsOn(completePlan({ ...plan, ...change }), true)).to.not.equal(key);
  });
});

describe('astig-sweep: drawing', () => {
  it('has every part of the contract; the band can be left out', async () => {
    const { view, root } = await sweepFixture();
    const there = (): string[] => ['curve', 'band', 'best', 'marker', 'marker-handle', 'temporal', 'superior', 'good'].filter((part) => root.querySelector(`[part="${part}"]`));
    expect(there()).to.have.length(8);
    view.hideSpread = true;
    await drawn(view);
    expect(there()).to.have.length(7).and.not.include('band');
    expect(root.querySelector('svg')!.getAttribute('aria-label')).to.not.contain('half of all eyes');
  });

  it('says in words what the picture says', async () => {
    const { root } = await sweepFixture();
    const svg = root.querySelector('svg')!;
    expect(svg.getAttribute('role')).to.equal('img');
    for (const part of ['Right eye', "Least with the incision at 0 degrees, nasal, 3 o'clock: 0.01 dioptres", 'Temporal: 0.28 dioptres', 'Superior: 0.94 dioptres', "Present incision at 180 degrees, temporal, 9 o'clock: 0.28 dioptres", 'half of all eyes like this would end between 0.43 and 0.93 dioptres']) {
      expect(svg.getAttribute('aria-label')).to.contain(part);
    }
  });

  it('follows another drawing, and a case that is named by id', async () => {
    const { eye, view, root } = await sweepFixture();
    const curve = (): string => root.querySelector('[part="curve"]')!.getAttribute('d')!;
    const before = curve();
    eye.arcLength = 60;
    await drawn(view);
    expect(curve()).to.not.equal(before);
    eye.id = 'named';
    const other = await fixture<HTMLElement & { updateComplete: Promise<boolean> }>(html`<astig-sweep for="named"></astig-sweep>`);
    await drawn(other);
    expect(other.shadowRoot!.querySelector('svg')!.getAttribute('aria-label')).to.equal(root.querySelector('svg')!.getAttribute('aria-label'));
    const none = await fixture<HTMLElement>(html`<astig-sweep></astig-sweep>`);
    expect(none.shadowRoot!.querySelector('svg')).to.equal(null);
  });

  it('tells where a figure comes from', async () => {
    const { root } = await sweepFixture();
    root.querySelectorAll<HTMLElement>('.sourced')[2]!.click();
    await until(() => root.querySelector('.source:popover-open h2')?.textContent.includes('Uncertainty'), 'the source');
  });

  itInEveryScheme('has no fault that axe can find', async () => {
    const planned = await sweepFixture();
    await expect(planned.eye).to.be.accessible();
    const { eye } = await sweepFixture({ plan: { incisionSite: null } });
    await expect(eye).to.be.accessible();
  });
});

/** How many labels have a place depends on how wide the letters are: the same in every engine. */
const TYPE = "'Liberation Sans', Arial";

/** How far two boxes may touch before it counts, CSS px. */
const TOUCH = 0.5;

/** Labels of a drawing that overlap another or leave the drawing. */
function faults(drawing: SVGSVGElement): string[] {
  const edge = drawing.getBoundingClientRect();
  const labels = [...drawing.querySelectorAll('text')].map((text) => ({ text: text.textContent, box: inkBox(text) }));
  return labels.flatMap(({ text, box }, index) => {
    const clipped = box.left < edge.left - TOUCH || box.right > edge.right + TOUCH || box.top < edge.top - TOUCH || box.bottom > edge.bottom + TOUCH;
    const touched = labels.slice(index + 1).filter(({ box: other }) => box.right > other.left + TOUCH && other.right > box.left + TOUCH && box.bottom > other.top + TOUCH && other.bottom > box.top + TOUCH);
    return [...(clipped ? [`“${text}” is clipped`] : []), ...touched.map((other) => `“${text}” and “${other.text}” overlap`)];
  });
}

describe('astig-sweep: labels', () => {
  for (const font of [16, 32]) {
    for (const width of [300, 420, 700]) {
      it(`never overlap or clip at ${width} px with text of ${font} px, over 200 random plans, and nearly all have a place`, async () => {
        const { eye, view, root } = await sweepFixture({ width, wrap: (inner) => html`<div class="host">${inner}</div><style>.host { font: ${font}px ${TYPE}; }</style>` });
        const drawing = root.querySelector('svg')!;
        expect(drawing.clientWidth).to.equal(width);
        // The style sheet gives the height before anything is measured; it must be that of the layout.
        expect(drawing.getBoundingClientRect().height).to.be.closeTo(drawing.viewBox.baseVal.height, 0.1);
        const bad: string[] = [];
        let named = 0;
        for (const plan of plans(200)) {
          eye.plan = plan;
          await eye.updateComplete;
          await view.updateComplete;
          bad.push(...faults(drawing).map((fault) => `${fault}: ${JSON.stringify(plan)}`));
          named += drawing.querySelectorAll('.name').length;
        }
        expect(bad.slice(0, 5)).to.deep.equal([]);
        expect(named).to.be.above(200 * 2.8);
      }).timeout(60_000);
    }
  }
});
