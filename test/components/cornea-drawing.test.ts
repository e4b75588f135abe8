import { expect, fixture, html } from '@open-wc/testing';
import { CEDAR, apart, bringIntoView, centreOf, corneaFixture, dragMouse, drawn, onEye } from './support.js';

const INCISION = '[part~="incision-handle"]';

describe('astig-cornea: drawing', () => {
  it('draws incision and arcs to scale', async () => {
    const { cornea } = await corneaFixture();
    const root = cornea.shadowRoot!;
    const scale = root.querySelector<SVGCircleElement>('[part~="limbus"]')!.r.baseVal.value / 5.85;
    const entry = root.querySelector<SVGPathElement>('.entry')!;
    const [a, b] = [entry.getPointAtLength(0), entry.getPointAtLength(entry.getTotalLength())];
    expect(Math.hypot(a.x - b.x, a.y - b.y) / scale).to.be.closeTo(CEDAR.incisionWidth, 0.01);
    const arc = root.querySelector<SVGPathElement>('[part~="arc"]')!;
    expect(arc.getTotalLength() / scale).to.be.closeTo((CEDAR.arcLength * Math.PI * 5.5) / 180, 0.01);
  });

  it('has every part of the contract, and the centre of the cornea at the centre of the view', async () => {
    const { eye, cornea } = await corneaFixture();
    eye.lensCylinder = 1;
    eye.lensMeridian = 10;
    await drawn(cornea);
    const parts = ['limbus', 'ring', 'steep-before', 'flat-before', 'steep-after', 'incision', 'arc', 'lens-axis', 'incision-handle', 'arc-handle', 'arc-end-handle', 'lens-handle'];
    for (const part of parts) expect(cornea.shadowRoot!.querySelector(`[part~="${part}"]`), part).to.not.equal(null);
    const [x, y, width, height] = cornea.shadowRoot!.querySelector('svg')!.getAttribute('viewBox')!.split(' ').map(Number) as [number, number, number, number];
    expect(x + width / 2).to.be.closeTo(0, 1e-9);
    expect(y + height / 2).to.be.closeTo(0, 1e-9);
  });

  it('puts nasal and temporal on the right side for each eye and seat', async () => {
    const { eye, cornea } = await corneaFixture();
    const words = (): string[] => [...cornea.shadowRoot!.querySelectorAll('.side')].map((word) => word.textContent);
    expect(words()).to.have.members(['← temporal', 'nasal →']);
    eye.eye = 'left';
    await drawn(cornea);
    expect(words()).to.have.members(['temporal →', '← nasal']);
    cornea.viewpoint = 'above';
    await drawn(cornea);
    expect(words()).to.have.members(['← temporal', 'nasal →']);
    cornea.viewpoint = 'temporal';
    await drawn(cornea);
    expect(words()).to.have.members(['temporal ↓', 'nasal ↑']);
  });

  it('drags as the eye lies, from every seat', async () => {
    for (const [viewpoint, shown] of [['above', 300], ['temporal', 210]] as const) {
      const { eye, cornea } = await corneaFixture();
      cornea.viewpoint = viewpoint;
      await drawn(cornea);
      await bringIntoView(cornea.shadowRoot!.querySelector('svg')!);
      await dragMouse(centreOf(cornea, INCISION), onEye(cornea, shown, 6.75));
      expect(apart(eye.incisionSite!, 120), viewpoint).to.be.at.most(1);
    }
  });

  it('shades the sector of the remaining steep meridian, narrower where more is known, and hides it when asked', async () => {
    const { eye, cornea } = await corneaFixture();
    eye.plan = { steepK: 46, steepMeridian: 90 };
    await drawn(cornea);
    const area = (): number => cornea.shadowRoot!.querySelector<SVGPathElement>('[part~="steep-spread"]')!.getBBox().width;
    const sure = area();
    eye.plan = { steepK: 43.5, steepMeridian: 90 };
    await drawn(cornea);
    expect(area()).to.be.above(2 * sure);
    cornea.hideSpread = true;
    await drawn(cornea);
    expect(cornea.shadowRoot!.querySelector('[part~="steep-spread"]')).to.equal(null);
  });

  it('lets the petals shrink and turn with what is left', async () => {
    const { eye, cornea } = await corneaFixture();
    const size = (): number => cornea.shadowRoot!.querySelector<SVGPathElement>('.remaining-petals')!.getBBox().width;
    eye.arcCount = 0;
    await drawn(cornea);
    const without = size();
    eye.arcCount = 1;
    await drawn(cornea);
    expect(size()).to.be.below(without);
  });

  it('says in words what the picture says', async () => {
    const { cornea } = await corneaFixture();
    const text = cornea.shadowRoot!.querySelector('svg')!.getAttribute('aria-label')!;
    for (const part of ['Right eye', '180 degrees by 1.00 dioptres', 'against the rule', 'Incision 2.75 mm', "9 o'clock", '30 degrees long', 'remain: 0.28 dioptres']) {
      expect(text).to.contain(part);
    }
  });

  it('shows a message without a case, and draws as soon as there is one', async () => {
    const cornea = await fixture<HTMLElement & { for: string; updateComplete: Promise<boolean> }>(html`<astig-cornea for="later"></astig-cornea>`);
    expect(cornea.shadowRoot!.querySelector('svg')).to.equal(null);
    const eye = document.createElement('astig-case');
    eye.id = 'later';
    cornea.parentElement!.append(eye);
    await drawn(cornea);
    expect(cornea.shadowRoot!.querySelector('svg')).to.not.equal(null);
  });
});
