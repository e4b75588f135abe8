import { expect } from '@open-wc/testing';
import { DEFAULTS } from '../../core/index.js';
import { DOGWOOD, Form } from './entry-support.js';
import { press } from './support.js';

describe('astig-entry: which eye', () => {
  it('leaves the degrees, changes the words, and offers to mirror', async () => {
    const form = await Form.open({ ...DOGWOOD, incisionSite: 0 });
    expect(form.aside('incisionSite')).to.equal("temporal, 3 o'clock");
    const before = form.eye.plan;
    await form.choose('eye', 'right');
    expect(form.eye.plan).to.deep.equal({ ...before, eye: 'right' });
    expect(form.aside('incisionSite')).to.equal("nasal, 3 o'clock");
    expect(form.counts).to.deep.equal([1, 1]);
    expect(form.sources).to.deep.equal(['astig-entry eye']);
    expect(form.root.querySelector('[part=offer]')!.textContent).to.contain('Nothing has been mirrored');
    expect(form.offer).to.equal('Mirror the sites and meridians for the right eye');
  });

  it('mirrors everything as one step that can be taken back', async () => {
    const form = await Form.open(DOGWOOD);
    const before = form.eye.plan;
    await form.choose('eye', 'right');
    await form.press('mirror');
    const mirrored = { steepMeridian: 83, backSurface: '0.3@5', incisionSite: 160, arcSite: 80, lensMeridian: 85 };
    expect(form.eye.plan).to.deep.equal({ ...before, eye: 'right', ...mirrored });
    expect(form.counts).to.deep.equal([2, 2]);
    expect(form.log.changes[1]!.source).to.equal('astig-entry mirror');
    expect(form.offer).to.equal(null);
    expect(form.focused).to.equal('eye=right');
    await form.press('undo');
    expect(form.eye.plan).to.deep.equal({ ...before, eye: 'right' });
  });

  it('withdraws the offer when it is not needed, when the eye goes back, or when another eye comes', async () => {
    const form = await Form.open(DOGWOOD);
    await form.choose('eye', 'right');
    await form.press('dismiss');
    expect(form.offer).to.equal(null);
    await form.choose('eye', 'left');
    expect(form.offer).to.contain('left eye');
    await form.press('undo');
    expect(form.offer).to.equal(null);
    await form.choose('eye', 'left');
    form.eye.plan = { ...DOGWOOD, steepMeridian: 12 };
    await form.settled();
    expect(form.offer).to.equal(null);
  });

  it('offers nothing where mirroring would change nothing', async () => {
    const form = await Form.open({ incisionSite: 90 });
    await form.choose('eye', 'left');
    expect(form.offer).to.equal(null);
  });
});

describe('astig-entry: switching on and off', () => {
  it('suggests a temporal incision', async () => {
    const form = await Form.open({ eye: 'left' });
    await form.choose('incision', 'yes');
    expect(form.eye.plan.incisionSite).to.equal(0);
    expect(form.text('incisionSite')).to.equal('0');
    expect(form.counts).to.deep.equal([1, 1]);
    await form.choose('incision', 'no');
    expect(form.eye.plan.incisionSite).to.equal(null);
    await form.choose('eye', 'right');
    await form.choose('incision', 'yes');
    expect(form.eye.plan.incisionSite).to.equal(180);
  });

  for (const [words, plan, site] of [
    ['opposite an incision on the steep meridian', { steepMeridian: 170, incisionSite: 180 }, 350],
    ['opposite an upper incision on the steep meridian', { steepMeridian: 85, incisionSite: 90 }, 265],
    ['nasally where the incision is elsewhere', { steepMeridian: 170, incisionSite: 90 }, 350],
    ['nasally in a left eye', { eye: 'left', steepMeridian: 170 }, 170],
    ['at the upper end where none is nasal', { steepMeridian: 90 }, 90],
  ] as const) {
    it(`suggests arcs ${words}`, async () => {
      const form = await Form.open({ flatK: 42, steepK: 44, ...plan });
      await form.choose('arcCount', '1');
      expect([form.eye.plan.arcCount, form.eye.plan.arcSite]).to.deep.equal([1, site]);
      expect(form.counts).to.deep.equal([1, 1]);
      await form.choose('arcCount', '0');
      expect([form.eye.plan.arcCount, form.eye.plan.arcSite]).to.deep.equal([0, null]);
    });
  }

  it('keeps the site when one arc becomes a pair', async () => {
    const form = await Form.open(DOGWOOD);
    await form.choose('arcCount', '1');
    await form.choose('arcCount', '2');
    expect([form.eye.plan.arcCount, form.eye.plan.arcSite]).to.deep.equal([2, 100]);
    expect(form.aside('arcSite')).to.equal("superior, 11:40 o'clock; and inferior, 5:40 o'clock");
  });

  it('suggests one dioptre on the steep meridian of what would be left', async () => {
    const form = await Form.open({ ...DOGWOOD, lensCylinder: null, lensMeridian: null });
    const along = Math.round(form.eye.outcome.after.meridian);
    await form.choose('lens', 'yes');
    expect([form.eye.plan.lensCylinder, form.eye.plan.lensMeridian]).to.deep.equal([1, along]);
    expect(form.counts).to.deep.equal([1, 1]);
    await form.choose('lens', 'no');
    expect([form.eye.plan.lensCylinder, form.eye.plan.lensMeridian]).to.deep.equal([null, null]);
  });

  it('sets the back surface and the way of cutting', async () => {
    const form = await Form.open({ arcCount: 1, arcSite: 0 });
    await form.choose('backSurface', 'typical');
    expect(form.eye.plan.backSurface).to.equal('typical');
    await form.choose('backSurface', 'measured');
    expect([form.eye.plan.backSurface, form.text('backPower'), form.text('backMeridian')]).to.deep.equal(['0.27@180', '0.27', '180']);
    await form.choose('backSurface', 'omitted');
    expect(form.eye.plan.backSurface).to.equal('omitted');
    await form.choose('arcMethod', 'laser');
    expect(form.eye.plan.arcMethod).to.equal('laser');
  });

  it('ticks and unticks what is known of the eye', async () => {
    const form = await Form.open();
    await form.choose('risks', 'ectasia');
    await form.choose('risks', 'dry-eye');
    expect(form.eye.plan.risks).to.equal('dry-eye ectasia');
    await form.choose('risks', 'ectasia');
    expect(form.eye.risks).to.equal('dry-eye');
    expect(form.counts).to.deep.equal([3, 3]);
    expect(form.sources).to.deep.equal(['astig-entry risks']);
    form.eye.risks = 'collagen';
    await form.settled();
    expect([form.radio('risks', 'collagen').checked, form.radio('risks', 'dry-eye').checked]).to.deep.equal([true, false]);
  });

  it('shows what the case holds when the page sets it back at once', async () => {
    const form = await Form.open();
    form.eye.addEventListener('astig-change', () => (form.eye.eye = 'right'));
    await form.choose('eye', 'left');
    expect([form.eye.plan.eye, form.on('eye')]).to.deep.equal(['right', 'right']);
  });

  it('works with the arrow keys', async () => {
    const form = await Form.open();
    form.radio('arcCount', '0').focus();
    await press('ArrowRight');
    await form.settled();
    expect([form.eye.plan.arcCount, form.on('arcCount')]).to.deep.equal([1, '1']);
  });

  it('forgets a wrong text whose field is switched off', async () => {
    const form = await Form.open(DOGWOOD);
    await form.fill('incisionSite', '999');
    await form.fill('arcLength', '999');
    await form.choose('incision', 'no');
    await form.choose('arcCount', '0');
    await form.fill('age', '60');
    expect(form.eye.plan.incisionSite).to.equal(null);
    await form.choose('incision', 'yes');
    await form.choose('arcCount', '1');
    expect([form.text('incisionSite'), form.text('arcLength')]).to.deep.equal(['0', '45']);
    expect([form.isWrong('incisionSite'), form.isWrong('arcLength')]).to.deep.equal([false, false]);
  });
});

describe('astig-entry: taking back', () => {
  it('takes back and does again by its buttons, which tell the page', async () => {
    const form = await Form.open({ age: 60 });
    const disabled = (action: string): string | null => form.button(action)!.getAttribute('aria-disabled');
    expect(['undo', 'redo', 'reset'].map(disabled)).to.deep.equal(['true', 'true', 'true']);
    await form.press('undo');
    expect(form.counts).to.deep.equal([0, 0]);
    await form.fill('age', '70');
    await form.press('undo');
    expect([form.eye.plan.age, form.text('age')]).to.deep.equal([60, '60']);
    expect(form.focused).to.equal('undo');
    await form.press('redo');
    expect([form.eye.plan.age, form.text('age')]).to.deep.equal([70, '70']);
    expect(form.log.changes.map(({ source }) => source)).to.deep.equal(['astig-entry age', 'astig-entry undo', 'astig-entry redo']);
  });

  it('goes back to the measured eye as one step', async () => {
    const form = await Form.open(DOGWOOD);
    const before = form.eye.plan;
    await form.press('reset');
    const { eye, flatK, steepK, steepMeridian, age, backSurface, localThickness } = before;
    expect(form.eye.plan).to.deep.equal({ ...DEFAULTS, eye, flatK, steepK, steepMeridian, age, backSurface, localThickness });
    expect(form.counts).to.deep.equal([1, 1]);
    expect(form.sources).to.deep.equal(['astig-entry reset']);
    expect([form.on('incision'), form.on('arcCount'), form.on('lens')]).to.deep.equal(['no', '0', 'no']);
    await form.press('undo');
    expect(form.eye.plan).to.deep.equal(before);
  });

  it('takes back by the usual keys, which work on the text while it is unfinished', async () => {
    const form = await Form.open({ age: 60 });
    await form.fill('age', '70');
    await form.retype('age', '75');
    await press('Control+z');
    await form.settled();
    expect(form.eye.plan.age, 'the browser takes the typing back').to.not.equal(60);
    await press('Escape');
    await form.settled();
    expect(form.text('age')).to.equal('70');
    await press('Control+z');
    await form.settled();
    expect([form.eye.plan.age, form.text('age')]).to.deep.equal([60, '60']);
    await press('Control+Shift+Z');
    await form.settled();
    expect([form.eye.plan.age, form.text('age')]).to.deep.equal([70, '70']);
  });
});
