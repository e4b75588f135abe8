import { expect, fixture, html } from '@open-wc/testing';
import { movesOf } from '../../components/internal/case-moves.js';
import { emulate } from '../engine.js';
import { DOGWOOD, Form } from './entry-support.js';
import { listen, press } from './support.js';

describe('astig-entry: changes from elsewhere', () => {
  it('shows them and fires nothing', async () => {
    const form = await Form.open();
    form.eye.steepK = 44.256;
    form.eye.age = 33;
    form.eye.incisionSite = 93.46;
    form.eye.backSurface = '0.5@20';
    await form.settled();
    expect(['steepK', 'age', 'incisionSite', 'backPower', 'backMeridian'].map((id) => form.text(id))).to.deep.equal(['44.26', '33', '93.5', '0.50', '20']);
    expect(form.counts).to.deep.equal([0, 0]);
  });

  it('follows a drag elsewhere, but leaves a wrong text that is being typed', async () => {
    const form = await Form.open(DOGWOOD);
    const { model } = form.eye;
    await form.retype('arcLength', '5');
    movesOf(model).move({ arcLength: 60, incisionSite: 33 }, 'astig-cornea arc-end-handle', null);
    await form.settled();
    expect([form.text('arcLength'), form.text('incisionSite')]).to.deep.equal(['5', '33']);
    await press('Tab');
    movesOf(model).move({ arcLength: 70 }, 'astig-cornea arc-end-handle', null);
    await form.settled();
    expect([form.text('arcLength'), form.isWrong('arcLength')]).to.deep.equal(['70', false]);
  });

  it('keeps a wrong text while something else is chosen, taken back and dragged', async () => {
    const form = await Form.open(DOGWOOD);
    await form.fill('age', '999');
    movesOf(form.eye.model).choose({ incisionSite: 22 }, 'astig-cornea incision-handle', null);
    await form.settled();
    form.eye.undo();
    await form.settled();
    expect([form.text('age'), form.text('incisionSite')]).to.deep.equal(['999', '20']);
    movesOf(form.eye.model).move({ incisionSite: 33 }, 'astig-cornea incision-handle', null);
    await form.settled();
    movesOf(form.eye.model).commit('astig-cornea incision-handle', null);
    await form.settled();
    expect([form.text('age'), form.isWrong('age')]).to.deep.equal(['999', true]);
  });

  it('keeps what is being typed when something else is dragged and given up, as a step of its own', async () => {
    const form = await Form.open({ ...DOGWOOD, age: 50 });
    const { eye } = form;
    const moves = movesOf(eye.model);
    const cornea = document.createElement('div');
    await form.retype('age', '71');
    const [typed] = form.counts;
    // Given up before it has moved anything, and after.
    moves.abandon(cornea);
    expect([eye.plan.age, ...form.counts]).to.deep.equal([71, typed, 0]);
    moves.move({ incisionSite: 33 }, 'astig-cornea incision-handle', cornea);
    expect(form.counts).to.deep.equal([typed! + 1, 1]);
    moves.commit('astig-entry age', form.entry);
    moves.abandon(cornea);
    expect([eye.plan.age, eye.plan.incisionSite, ...form.counts]).to.deep.equal([71, DOGWOOD.incisionSite, typed! + 1, 1]);
    await press('Tab');
    expect(form.counts).to.deep.equal([typed! + 1, 1]);
    eye.undo();
    expect([eye.plan.age, eye.plan.incisionSite]).to.deep.equal([50, DOGWOOD.incisionSite]);
  });

  it('never carries a text over to another eye', async () => {
    const form = await Form.open();
    await form.fill('flatK', '44');
    form.eye.plan = { flatK: 43, steepK: 46 };
    await form.settled();
    expect([form.text('flatK'), form.isWrong('flatK')]).to.deep.equal(['43.00', false]);
    await form.fill('age', '70');
    expect(form.eye.plan.flatK).to.equal(43);
  });

  it('carries none over either when the next key comes before the other eye is drawn', async () => {
    const form = await Form.open();
    await form.fill('flatK', '44');
    form.eye.plan = { flatK: 43, steepK: 46 };
    expect(form.eye.plan.steepK).to.equal(46);
    form.field('age').value = '70';
    form.field('age').dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
    expect([form.eye.plan.age, form.eye.plan.flatK]).to.deep.equal([70, 43]);
  });

  it('says which settings of the page are refused, and changes nothing until they are mended', async () => {
    const form = await Form.open({ age: 50 });
    form.eye.flatK = 99;
    await form.settled();
    expect(form.alert).to.contain('Flat reading: 99 is refused; allowed is 28 to 75 D.').and.to.contain('last good plan is still shown');
    await form.fill('age', '70');
    await form.choose('incision', 'yes');
    await form.press('reset');
    expect([form.eye.plan.age, form.eye.plan.incisionSite, form.on('incision')]).to.deep.equal([50, null, 'no']);
    expect(form.counts).to.deep.equal([0, 0]);
    form.eye.flatK = 43;
    await form.settled();
    expect(form.alert).to.equal(null);
    await form.fill('age', '70');
    expect(form.eye.plan.age).to.equal(70);
  });

  it('keeps the rarely used fields open or closed, and opens them when they matter', async () => {
    const form = await Form.open(DOGWOOD);
    const details = (): HTMLDetailsElement => form.root.querySelector<HTMLDetailsElement>('details')!;
    expect(details().open).to.equal(false);
    details().querySelector('summary')!.focus();
    await press('Enter');
    for (const incisionSite of [30, 40, 50]) {
      form.eye.incisionSite = incisionSite;
      await form.settled();
    }
    expect(details().open).to.equal(true);
    const other = await Form.open({ ...DOGWOOD, incisionFlattening: 0.2 });
    expect(other.root.querySelector<HTMLDetailsElement>('details')!.open).to.equal(true);
    await other.fill('incisionFlattening', '');
    expect(other.root.querySelector<HTMLDetailsElement>('details')!.open).to.equal(true);
  });
});

describe('astig-entry: where it stands', () => {
  it('cannot be changed when it or its case is read-only', async () => {
    const form = await Form.open(DOGWOOD);
    for (const element of [form.entry, form.eye]) {
      element.readOnly = true;
      element.requestUpdate();
      await form.settled();
      const inputs = [...form.root.querySelectorAll('input')];
      expect(inputs.every((input) => input.readOnly || input.disabled)).to.equal(true);
      expect(form.root.querySelectorAll('button')).to.have.length(0);
      await form.fill('age', '20');
      expect([form.eye.plan.age, form.text('age'), ...form.counts]).to.deep.equal([71, '71', 0, 0]);
      element.readOnly = false;
      await form.settled();
    }
    expect(form.root.querySelectorAll('button')).to.have.length(3);
  });

  it('says so when there is no case', async () => {
    const entry = await fixture(html`<astig-entry></astig-entry>`);
    expect(entry.shadowRoot!.textContent).to.contain('Nothing to show yet');
  });

  it('works with `for`, and then tells the case', async () => {
    const root = await fixture(html`<div><astig-case id="there" age="60"></astig-case><astig-entry for="there"></astig-entry></div>`);
    const form = new Form(root.querySelector('astig-case')!, root.querySelector('astig-entry')!, listen(root.querySelector('astig-case')!));
    await form.settled();
    await form.fill('age', '70');
    expect([form.eye.plan.age, ...form.counts]).to.deep.equal([70, 2, 1]);
  });

  it('says that the numbers are estimates', async () => {
    const form = await Form.open();
    expect(form.root.querySelector('p.quiet')!.textContent).to.contain('Estimates');
  });

  for (const width of [300, 360, 768, 1200]) {
    it(`fits ${width} px at 16 and 32 px text, with targets of 44 px`, async () => {
      const box = await fixture<HTMLElement>(html`<div><astig-case .plan=${DOGWOOD}><astig-entry></astig-entry></astig-case></div>`);
      const root = box.querySelector('astig-entry')!.shadowRoot!;
      box.style.inlineSize = `${width}px`;
      for (const size of [16, 32]) {
        box.style.fontSize = `${size}px`;
        await new Promise(requestAnimationFrame);
        expect(box.scrollWidth, `${size} px text`).to.be.at.most(width);
        for (const target of root.querySelectorAll('input[type=text], .segment, button, summary')) {
          const { height, right } = target.getBoundingClientRect();
          expect(height, target.textContent!).to.be.at.least(44);
          expect(right).to.be.at.most(box.getBoundingClientRect().right + 0.5);
        }
      }
    });
  }

  for (const colorScheme of ['light', 'dark'] as const) {
    it(`is accessible in the ${colorScheme} scheme, as it is, empty, offering, wrong and refused`, async () => {
      await emulate({ 'prefers-color-scheme': colorScheme });
      const ground = document.documentElement.style;
      ground.colorScheme = 'light dark';
      ground.background = 'light-dark(#ffffff, #1d2024)';
      const form = await Form.open(DOGWOOD);
      await expect(form.entry).to.be.accessible();
      await form.choose('eye', 'right');
      await form.fill('flatK', '444');
      await form.fill('arcSite', '');
      await expect(form.entry).to.be.accessible();
      form.eye.flatK = 99;
      await form.settled();
      await expect(form.entry).to.be.accessible();
      await expect((await Form.open()).entry).to.be.accessible();
      await expect((await fixture(html`<astig-case read-only .plan=${DOGWOOD}><astig-entry></astig-entry></astig-case>`)) as Element).to.be.accessible();
      ground.colorScheme = ground.background = '';
      await emulate({});
    });
  }
});
