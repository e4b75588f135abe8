import { expect, fixture, html } from '@open-wc/testing';
import { sendMouse } from '@web/test-runner-commands';
import fc from 'fast-check';
import { LIMITS, evaluatePlan } from '../../core/index.js';
import type { EyePlan } from '../../core/index.js';
import { AstigCase } from '../../components/case/case.js';
import { CEDAR, centreOf, corneaFixture, dragMouse, drawn, listen, onEye, press } from './support.js';

const kebab = (name: string): string => name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

/** The same plan as attributes, as properties, as properties that are texts, and as one object. */
function fourWays(plan: EyePlan): AstigCase[] {
  const byAttribute = document.createElement('astig-case');
  const byText = document.createElement('astig-case');
  const byProperty = document.createElement('astig-case');
  const byObject = document.createElement('astig-case');
  for (const [name, value] of Object.entries(plan)) {
    if (value === null) continue;
    byAttribute.setAttribute(kebab(name), String(value));
    Object.assign(byProperty, { [name]: value });
    Object.assign(byText, { [name]: String(value) });
  }
  byObject.plan = plan;
  return [byAttribute, byProperty, byText, byObject];
}

const between = ({ min, max }: { min: number; max: number }) => fc.integer({ min: Math.ceil(min * 100), max: Math.floor(max * 100) }).map((n) => n / 100);

const somePlan: fc.Arbitrary<EyePlan> = fc
  .record({
    eye: fc.constantFrom('right' as const, 'left' as const),
    flatK: between({ min: 38, max: 44 }),
    steepK: between({ min: 44, max: 49 }),
    steepMeridian: fc.integer({ min: 1, max: 180 }),
    age: fc.option(between(LIMITS.age)),
    backSurface: fc.constantFrom('omitted' as const, 'typical' as const, '0.30@175' as const),
    incisionSite: fc.option(fc.integer({ min: 0, max: 359 })),
    incisionWidth: between(LIMITS.incisionWidth),
    arcSite: fc.integer({ min: 0, max: 359 }),
    arcLength: between(LIMITS.arcLength),
    arcCount: fc.constantFrom(0 as const, 1 as const, 2 as const),
    arcMethod: fc.constantFrom('blade' as const, 'laser' as const),
    lensCylinder: fc.option(between({ min: 0.5, max: 6 })),
    lensMeridian: fc.integer({ min: 1, max: 180 }),
  });

describe('astig-case: settings', () => {
  it('gives the same outcome for attributes, properties and one object', () => {
    fc.assert(
      fc.property(somePlan, (plan) => {
        const outcome = JSON.stringify(evaluatePlan(plan));
        const [first, ...others] = fourWays(plan) as [AstigCase, ...AstigCase[]];
        for (const eye of [first, ...others]) {
          expect(eye.refusals.map(({ message }) => message)).to.deep.equal([]);
          expect(eye.plan).to.deep.equal(first.plan);
          expect(JSON.stringify(eye.outcome)).to.equal(outcome);
        }
      }),
      { numRuns: 200 },
    );
  });

  it('gives a plan that survives JSON', () => {
    fc.assert(
      fc.property(somePlan, (plan) => {
        const eye = new AstigCase();
        eye.plan = plan;
        const copy = JSON.parse(JSON.stringify(eye.plan)) as EyePlan;
        expect(copy).to.deep.equal(eye.plan);
        const other = new AstigCase();
        other.plan = copy;
        expect(other.plan).to.deep.equal(eye.plan);
      }),
      { numRuns: 200 },
    );
  });

  it('has the defaults of its table', () => {
    const eye = new AstigCase();
    expect(eye.flatK).to.equal(43);
    expect(eye.steepK).to.equal(43);
    expect(eye.kUnit).to.equal('D');
    expect(eye.incisionWidth).to.equal(2.4);
    expect(eye.arcZone).to.equal(11);
    expect(eye.backSurface).to.equal('omitted');
    expect(eye.outcome.before.magnitude).to.equal(0);
  });

  it('is current right after an assignment, without waiting for rendering', () => {
    const eye = new AstigCase();
    eye.steepK = 45;
    expect(eye.outcome.before.magnitude).to.equal(2);
    eye.setAttribute('steep-k', '44.5');
    expect(eye.outcome.before.magnitude).to.equal(1.5);
  });

  it('never fires for what the page sets', async () => {
    const { eye, cornea } = await corneaFixture();
    const log = listen(document);
    eye.incisionSite = 10;
    eye.setAttribute('arc-length', '60');
    eye.plan = { ...CEDAR, eye: 'left' };
    eye.undo();
    eye.redo();
    eye.reset();
    await drawn(eye, cornea);
    expect([log.inputs.length, log.changes.length]).to.deep.equal([0, 0]);
  });

  it('keeps what was set before the tag was defined', async () => {
    class LateCase extends AstigCase {}
    const [single, whole] = [document.createElement('late-case') as AstigCase, document.createElement('late-case') as AstigCase];
    single.steepK = 44;
    whole.plan = CEDAR;
    document.body.append(single, whole);
    customElements.define('late-case', LateCase);
    await Promise.all([single.updateComplete, whole.updateComplete]);
    expect(single.outcome.before.magnitude).to.equal(1);
    expect(whole.plan.incisionSite).to.equal(180);
    single.remove();
    whole.remove();
  });
});

describe('astig-case: radii in millimetres', () => {
  it('takes radii whatever the order of the attributes', async () => {
    const eye = await fixture<AstigCase>(html`<astig-case flat-k="7.85" steep-k="7.67" k-unit="mm"></astig-case>`);
    expect(eye.refusals).to.have.length(0);
    expect(eye.plan.flatK).to.be.closeTo(337.5 / 7.85, 1e-12);
    expect(eye.plan.steepK).to.be.closeTo(337.5 / 7.67, 1e-12);
    expect(eye.flatK).to.equal(7.85);
  });

  it('takes a plan in dioptres exactly, also while it shows millimetres', () => {
    const eye = new AstigCase();
    eye.kUnit = 'mm';
    eye.plan = { flatK: 43.1, steepK: 44.37 };
    expect(eye.plan.flatK).to.equal(43.1);
    expect(eye.plan.steepK).to.equal(44.37);
    expect(eye.flatK).to.be.closeTo(337.5 / 43.1, 1e-12);
  });

  it('does not take dioptres for millimetres or the other way round', () => {
    const eye = new AstigCase();
    eye.kUnit = 'mm';
    eye.flatK = 43;
    eye.steepK = 44;
    expect(eye.refusals.map(({ field }) => field)).to.include.members(['flatK', 'steepK']);
    expect(eye.refusals[0]!.message).to.match(/flatK.*43.*4\.50 to 12\.05 mm/);
    const other = new AstigCase();
    other.flatK = 7.8;
    expect(other.refusals[0]!.message).to.match(/flatK.*7\.8.*28 to 75 D/);
  });

  it('refuses a steep radius that is longer than the flat one, in millimetres', () => {
    const eye = new AstigCase();
    eye.kUnit = 'mm';
    eye.flatK = 7.6;
    eye.steepK = 7.9;
    expect(eye.refusals[0]!.message).to.match(/steepK: 7\.9 .*at most 7\.6 mm/);
  });
});

describe('astig-case: refusals', () => {
  it('names field, value and limits, and lets the last good plan stand as a whole', () => {
    const eye = new AstigCase();
    eye.plan = CEDAR;
    const { outcome } = eye;
    eye.incisionSite = 90;
    eye.incisionWidth = 9;
    expect(eye.refusals).to.have.length(1);
    expect(eye.refusals[0]!.message).to.match(/incisionWidth: 9 .*1\.8 to 3\.5 mm/);
    expect(eye.plan.incisionSite).to.equal(180);
    expect(eye.outcome).to.equal(outcome);
    eye.incisionWidth = 2.2;
    expect(eye.refusals).to.have.length(0);
    expect(eye.plan.incisionSite).to.equal(90);
  });

  it('never throws and never takes nonsense from attributes', () => {
    const names = ['eye', 'flat-k', 'steep-k', 'k-unit', 'steep-meridian', 'age', 'back-surface', 'incision-site', 'incision-width', 'incision-flattening', 'arc-site', 'arc-length', 'arc-count', 'arc-zone', 'arc-depth', 'arc-method', 'arc-flattening', 'local-thickness', 'lens-cylinder', 'lens-meridian'];
    const nasty = fc.oneof(fc.string(), fc.constantFrom('', ' ', 'NaN', 'Infinity', '-0', '1e9', '0x2B', '43,5', '<b>1</b>', '181', '360', '-1', 'null', 'undefined', '٤٣'));
    fc.assert(
      fc.property(fc.constantFrom(...names), nasty, (name, text) => {
        const eye = new AstigCase();
        eye.setAttribute(name, text);
        const { outcome, refusals } = eye;
        expect(Number.isFinite(outcome.after.magnitude)).to.equal(true);
        for (const { message } of refusals) expect(message).to.contain('allowed is');
        if (refusals.length === 0) expect(JSON.stringify(outcome)).to.equal(JSON.stringify(evaluatePlan(eye.plan)));
      }),
      { numRuns: 2000 },
    );
  });

  it('cannot be worked on while the page’s settings are refused', async () => {
    const { eye, cornea } = await corneaFixture();
    eye.incisionWidth = 9;
    await drawn(eye, cornea);
    await dragMouse(centreOf(cornea, '[part~="incision-handle"]'), onEye(cornea, 120, 6.75));
    expect(eye.plan.incisionSite).to.equal(180);
  });
});

describe('astig-case: undo and redo', () => {
  async function moved(): ReturnType<typeof corneaFixture> {
    const made = await corneaFixture();
    made.cornea.shadowRoot!.querySelector<HTMLInputElement>('input.incision')!.focus();
    await press('PageUp');
    await press('PageUp');
    return made;
  }

  it('takes back and does again by method, silently', async () => {
    const { eye } = await moved();
    const log = listen(eye);
    expect(eye.incisionSite).to.equal(200);
    eye.undo();
    expect(eye.incisionSite).to.equal(190);
    expect(eye.plan.incisionSite).to.equal(190);
    eye.undo();
    eye.undo();
    expect(eye.incisionSite).to.equal(180);
    eye.redo();
    expect(eye.incisionSite).to.equal(190);
    expect(log.changes).to.have.length(0);
  });

  it('takes back and does again by the usual keys, and tells the page', async () => {
    const { eye } = await moved();
    const log = listen(eye);
    await press('Control+z');
    expect(eye.incisionSite).to.equal(190);
    await press('Control+Shift+z');
    expect(eye.incisionSite).to.equal(200);
    await press('Control+z');
    await press('Control+y');
    expect(eye.incisionSite).to.equal(200);
    expect(log.changes.map(({ source }) => source)).to.deep.equal(['astig-case undo', 'astig-case redo', 'astig-case undo', 'astig-case redo']);
  });

  it('forgets what was done before the page loaded another plan', async () => {
    const { eye } = await moved();
    eye.plan = { ...CEDAR, eye: 'left', incisionSite: 0 };
    eye.undo();
    expect(eye.plan.eye).to.equal('left');
  });

  it('keeps its memory when the page sets what is there already', async () => {
    const { eye, cornea } = await moved();
    eye.incisionSite = eye.plan.incisionSite;
    const { plan } = eye;
    eye.plan = plan;
    await drawn(eye, cornea);
    eye.undo();
    expect(eye.incisionSite).to.equal(190);
  });

  it('goes back to the measured eye', async () => {
    const { eye } = await moved();
    eye.reset();
    expect(eye.plan).to.include({ steepK: 44, steepMeridian: 180, age: 70, localThickness: 650, incisionSite: null, arcCount: 0, lensCylinder: null });
  });
});

describe('astig-case: the page and the user at once', () => {
  it('ends a movement when the page loads another plan, and does not undo into the old eye', async () => {
    const { eye, cornea } = await corneaFixture();
    await dragMouse(centreOf(cornea, '[part~="incision-handle"]'), onEye(cornea, 120, 6.75), { hold: true });
    eye.plan = { ...CEDAR, eye: 'left', incisionSite: 0 };
    expect(eye.plan.eye).to.equal('left');
    await sendMouse({ type: 'up' });
    eye.undo();
    expect(eye.plan.eye).to.equal('left');
  });

  it('takes back by key in a view that names its case from outside', async () => {
    const { eye, cornea } = await corneaFixture();
    eye.id = 'far';
    cornea.for = 'far';
    eye.parentElement!.append(cornea);
    await drawn(cornea);
    cornea.shadowRoot!.querySelector<HTMLInputElement>('input.incision')!.focus();
    await press('PageUp');
    expect(eye.incisionSite).to.equal(190);
    await press('Control+z');
    expect(eye.incisionSite).to.equal(180);
  });
});
