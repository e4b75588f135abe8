import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { DOGWOOD, Form } from './entry-support.js';
import { press } from './support.js';

describe('astig-entry: typing', () => {
  it('moves the plan with each acceptable key and commits once when the field is left', async () => {
    const form = await Form.open();
    await form.retype('steepK', '44.5');
    expect(form.eye.plan.steepK).to.equal(44.5);
    // 4 is too little to be a reading, 44 and 44. say the same.
    expect(form.counts).to.deep.equal([2, 0]);
    await sendKeys({ press: 'Tab' });
    expect(form.counts).to.deep.equal([2, 1]);
    expect(form.sources).to.deep.equal(['astig-entry steep-k']);
    expect(form.log.changes[0]!.plan.steepK).to.equal(44.5);
    await form.settled();
    expect(form.text('steepK')).to.equal('44.50');
  });

  it('commits on Enter, once', async () => {
    const form = await Form.open();
    await form.retype('age', '70');
    await press('Enter');
    await press('Tab');
    expect([form.eye.age, ...form.counts]).to.deep.equal([70, 2, 1]);
  });

  it('keeps a wrong text, says what is wrong, and lets the last good plan stand', async () => {
    const form = await Form.open({ flatK: 42, steepK: 44 });
    await form.fill('flatK', '444');
    expect(form.text('flatK')).to.equal('444');
    expect(form.isWrong('flatK')).to.equal(true);
    expect(form.note('flatK')).to.equal('Flat reading: 444 D is outside 28 to 75 D.');
    expect(form.eye.plan.flatK).to.equal(42);
    expect(form.log.changes).to.have.length(0);
    // The key before the last one made 44, which the event told; the last one took it back.
    expect(form.log.inputs.map(({ plan }) => plan.flatK)).to.deep.equal([44, 42]);
    await form.fill('age', '60');
    expect([form.text('flatK'), form.eye.plan.flatK, form.eye.plan.age]).to.deep.equal(['444', 42, 60]);
  });

  it('does not call a number wrong before it can be known', async () => {
    const form = await Form.open();
    await form.retype('flatK', '4');
    expect(form.isWrong('flatK')).to.equal(false);
    await press('Tab');
    await form.settled();
    expect(form.note('flatK')).to.equal('Flat reading: 4 D is outside 28 to 75 D.');
    await form.retype('flatK', '9');
    expect(form.isWrong('flatK')).to.equal(true);
  });

  for (const [id, text, note] of [
    ['steepK', '4x', 'Steep reading: “4x” is not a number of dioptres. Enter 28 to 75 D.'],
    ['incisionSite', '', 'Incision site is empty. Enter 0 to 360°.'],
    ['arcDepth', '1,100', 'Arc depth: 1.100 µm is outside 100 to 900 µm.'],
    ['incisionWidth', '1.5', 'Incision width: 1.5 mm is outside 1.8 to 3.5 mm.'],
    ['backPower', '3.5', 'Back surface adds: 3.5 D is outside 0 to 3 D.'],
    ['arcLength', '1e2', 'Arc length: “1e2” is not a number of degrees. Enter 15 to 120°.'],
    ['lensMeridian', '-5', 'Lens meridian: -5° is outside 0 to 180°.'],
  ] as const) {
    it(`says of “${text}” in ${id}: ${note}`, async () => {
      const form = await Form.open(DOGWOOD);
      const before = form.eye.plan;
      await form.fill(id, text);
      expect(form.note(id)).to.equal(note);
      expect(form.text(id)).to.equal(text);
      expect(form.eye.plan).to.deep.equal(before);
      expect(form.log.changes).to.have.length(0);
    });
  }

  for (const [id, text, value] of [
    ['steepMeridian', '97,5', 97.5],
    ['steepMeridian', ' 12 ° ', 12],
    ['incisionWidth', '2.2mm', 2.2],
    ['arcDepth', '550 µm', 550],
    ['steepK', '45 D', 45],
    ['arcFlattening', ',8', 0.8],
    ['incisionFlattening', '−0.2', -0.2],
    ['incisionSite', '360', 0],
    ['lensMeridian', '0', 180],
  ] as const) {
    it(`reads “${text}” as ${value}`, async () => {
      const form = await Form.open(DOGWOOD);
      form.root.querySelectorAll('details').forEach((details) => (details.open = true));
      await form.fill(id, text);
      expect(form.eye.plan[id]).to.equal(value);
      expect(form.isWrong(id)).to.equal(false);
    });
  }

  it('takes an empty text for none where there may be none', async () => {
    const form = await Form.open(DOGWOOD);
    await form.fill('age', '');
    await form.fill('arcDepth', '');
    expect([form.eye.age, form.eye.arcDepth]).to.deep.equal([null, null]);
  });

  it('takes both halves of a measured back surface', async () => {
    const form = await Form.open(DOGWOOD);
    await form.fill('backPower', '0.4');
    await form.fill('backMeridian', '10');
    expect(form.eye.plan.backSurface).to.equal('0.4@10');
    expect(form.sources).to.deep.equal(['astig-entry back-surface']);
  });

  it('takes a flat reading above the old steep one as soon as the new steep one is there', async () => {
    const form = await Form.open();
    await form.fill('flatK', '44');
    expect(form.note('flatK')).to.equal('Flat reading: 44 D is above the steep reading. Enter 28 to 43.00 D, or change the steep reading.');
    expect([form.text('flatK'), form.eye.plan.flatK, ...form.counts]).to.deep.equal(['44', 43, 0, 0]);
    await form.fill('steepK', '45');
    expect([form.eye.plan.flatK, form.eye.plan.steepK]).to.deep.equal([44, 45]);
    expect(form.counts).to.deep.equal([1, 1]);
    expect([form.text('flatK'), form.text('steepK'), form.isWrong('flatK')]).to.deep.equal(['44.00', '45.00', false]);
  });

  it('takes a steep reading below the old flat one as soon as the new flat one is there', async () => {
    const form = await Form.open({ flatK: 43, steepK: 44 });
    await form.fill('steepK', '42');
    expect(form.note('steepK')).to.equal('Steep reading: 42 D is below the flat reading. Enter 43.00 to 75 D, or change the flat reading.');
    await form.fill('flatK', '41');
    expect([form.eye.plan.flatK, form.eye.plan.steepK]).to.deep.equal([41, 42]);
  });

  it('goes back to the value from before the typing when a refused text follows an accepted one', async () => {
    const form = await Form.open({ flatK: 41, steepK: 43 });
    await form.retype('flatK', '42');
    await press('Shift+ArrowLeft');
    await sendKeys({ type: '4' });
    expect([form.text('flatK'), form.eye.plan.flatK]).to.deep.equal(['44', 41]);
    await press('Tab');
    expect(form.counts).to.deep.equal([2, 0]);
  });

  it('ends the movement when the old text is typed again', async () => {
    const form = await Form.open({ age: 60 });
    await form.retype('age', '70');
    await form.fill('age', '60');
    expect([form.eye.plan.age, form.eye.model.moving, form.log.changes.length]).to.deep.equal([60, false, 0]);
  });

  it('goes back on Escape and fires no change', async () => {
    const form = await Form.open({ incisionSite: 180 });
    await form.retype('incisionSite', '90');
    expect(form.eye.plan.incisionSite).to.equal(90);
    await press('Escape');
    await form.settled();
    expect([form.text('incisionSite'), form.eye.plan.incisionSite]).to.deep.equal(['180', 180]);
    await press('Tab');
    expect(form.log.changes).to.have.length(0);
    await form.fill('incisionSite', '999');
    await form.enter('incisionSite');
    await press('Escape');
    await form.settled();
    expect([form.text('incisionSite'), form.isWrong('incisionSite')]).to.deep.equal(['180', false]);
  });

  it('lets Escape through to the page when there is nothing to put back', async () => {
    const form = await Form.open();
    const heard: string[] = [];
    const hear = (event: KeyboardEvent): void => void heard.push(event.key);
    document.addEventListener('keydown', hear);
    await form.enter('flatK');
    await press('Escape');
    expect(heard).to.deep.equal(['Escape']);
    await form.retype('flatK', '42');
    await press('Escape');
    document.removeEventListener('keydown', hear);
    expect(heard.filter((key) => key === 'Escape')).to.have.length(1);
  });

  it('commits what is accepted when it is taken out of the page', async () => {
    const form = await Form.open();
    await form.retype('age', '70');
    form.entry.remove();
    expect([form.eye.plan.age, form.eye.model.moving, ...form.counts]).to.deep.equal([70, false, 2, 1]);
  });

  it('lets no native event reach the page', async () => {
    const form = await Form.open();
    const leaked: string[] = [];
    for (const type of ['input', 'change']) form.entry.addEventListener(type, () => leaked.push(type));
    await form.fill('age', '70');
    await form.choose('eye', 'left');
    await form.choose('kUnit', 'mm');
    expect(leaked).to.deep.equal([]);
  });
});

describe('astig-entry: unit of the readings', () => {
  it('converts what is shown and leaves the plan exactly as it is', async () => {
    const form = await Form.open({ flatK: 42.37, steepK: 44.123 });
    const before = form.eye.plan;
    expect(form.text('steepK')).to.equal('44.12');
    await form.choose('kUnit', 'mm');
    expect([form.text('flatK'), form.text('steepK')]).to.deep.equal(['7.966', '7.649']);
    expect(form.eye.kUnit).to.equal('mm');
    await form.enter('flatK');
    await press('Tab');
    await form.choose('kUnit', 'D');
    expect(form.eye.plan).to.deep.equal(before);
    expect(form.counts).to.deep.equal([0, 0]);
  });

  it('reads radii, and gives their limits in mm', async () => {
    const form = await Form.open({ flatK: 42, steepK: 45 });
    await form.choose('kUnit', 'mm');
    expect(form.note('flatK')).to.equal('4.5–12.05 mm');
    await form.fill('flatK', '7,80');
    expect(form.eye.plan.flatK).to.equal(337.5 / 7.8);
    await form.fill('flatK', '13');
    expect(form.note('flatK')).to.equal('Flat reading: 13 mm is outside 4.5 to 12.05 mm.');
    await form.fill('flatK', '7.4');
    expect(form.note('flatK')).to.equal('Flat reading: 7.4 mm is shorter than the steep reading. Enter 7.50 to 12.05 mm, or change the steep reading.');
    await form.fill('flatK', '7.8');
    await form.fill('steepK', '8');
    expect(form.note('steepK')).to.equal('Steep reading: 8 mm is longer than the flat reading. Enter 4.5 to 7.80 mm, or change the flat reading.');
  });

  it('takes the number that the other reading shows for the other reading', async () => {
    const form = await Form.open({ flatK: 43, steepK: 45 });
    await form.choose('kUnit', 'mm');
    expect(form.text('flatK')).to.equal('7.849');
    await form.fill('steepK', '7.849');
    expect([form.eye.plan.flatK, form.eye.plan.steepK]).to.deep.equal([43, 43]);
  });

  it('takes a text that shows the old value for the old value', async () => {
    const form = await Form.open({ flatK: 42.123456, steepK: 45 });
    await form.fill('flatK', '42.12');
    expect(form.eye.plan.flatK).to.equal(42.123456);
    expect(form.log.changes).to.have.length(0);
  });
});
