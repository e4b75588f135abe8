import { expect, html } from '@open-wc/testing';
import { resetMouse, sendKeys, sendMouse } from '@web/test-runner-commands';
import { itWith } from '../engine.js';
import { MAPLE, Sight, difference } from './sight-support.js';
import { bringIntoView, dragMouse, dragTouch, listen, press } from './support.js';
import type { ClientPoint } from './support.js';

const DIVIDER = html`<astig-sight view="divider" scene="shelf"></astig-sight>`;

/** Where the divider stands on the screen, and a point so many per cent of the width further. */
function knob(sight: Sight): ClientPoint {
  const { x, y, width, height } = sight.find('.grip svg').getBoundingClientRect();
  return [Math.round(x + width / 2), Math.round(y + height / 2)];
}

function along(sight: Sight, percent: number): ClientPoint {
  const { x, y, width, height } = sight.find('.before canvas').getBoundingClientRect();
  return [Math.round(x + (width * percent) / 100), Math.round(y + height / 2)];
}

describe('astig-sight: choices', () => {
  afterEach(() => resetMouse());

  it('changes the scene by the pointer, and fires nothing', async () => {
    const sight = await Sight.open();
    const log = listen(document);
    const heard: string[] = [];
    for (const type of ['input', 'change']) sight.eye.addEventListener(type, () => heard.push(type));
    const chart = sight.pixels('before');
    await sight.click(sight.choice('scene', 'street'));
    expect(sight.view.scene).to.equal('street');
    expect(difference(chart, sight.pixels('before'))).to.be.at.least(100);
    expect(sight.label('before')).to.contain('A street at dusk');
    await sight.click(sight.choice('view', 'divider'));
    await sight.click(sight.find('input[name=glasses]').parentElement!);
    expect([sight.view.view, sight.view.glasses]).to.deep.equal(['divider', true]);
    expect([...heard, ...log.inputs, ...log.changes]).to.deep.equal([]);
  });

  it('changes the scene by keys, and keeps them from the page', async () => {
    const sight = await Sight.open();
    const keys: string[] = [];
    const collect = (event: KeyboardEvent): number => keys.push(event.key);
    document.addEventListener('keydown', collect);
    sight.find<HTMLInputElement>('input[name=scene]:checked').focus();
    await press('ArrowRight');
    await sight.view.ready;
    expect(sight.view.scene).to.equal('reading');
    await press('Tab');
    document.removeEventListener('keydown', collect);
    expect(keys).to.deep.equal(['Tab']);
    expect(sight.root.activeElement?.getAttribute('name')).to.equal('view');
  });

  it('goes back to the usual distance with another scene', async () => {
    const sight = await Sight.open(html`<astig-sight scene="reading" distance="0.5"></astig-sight>`);
    expect(sight.text('.notes')).to.contain('Seen from 0.5 m');
    await sight.click(sight.choice('scene', 'chart'));
    expect(sight.text('.notes')).to.contain('Seen from 6 m');
    expect(sight.root.querySelectorAll('[part=refused]')).to.have.length(0);
  });

  it('shows both sides sharp with glasses, and says so', async () => {
    const sight = await Sight.open();
    await sight.click(sight.find('input[name=glasses]').parentElement!);
    expect(difference(sight.pixels('before'), sight.pixels('after'))).to.equal(0);
    expect(sight.text('.notes')).to.contain('With glasses that correct sphere and cylinder in full.');
    expect(sight.label('before')).to.contain('It looks sharp.').and.contain('with such glasses');
  });

  it('shows no controls where the page wants none', async () => {
    const sight = await Sight.open(html`<astig-sight hide-controls view="pair"></astig-sight>`);
    expect(sight.root.querySelectorAll('input')).to.have.length(0);
    expect(sight.text('.notes')).to.contain('not a promise');
  });

  it('has controls of 44 px at least', async () => {
    const sight = await Sight.open(DIVIDER);
    await sight.click(sight.find('summary'));
    for (const control of sight.root.querySelectorAll('.segment, input[type=text], summary')) expect(control.getBoundingClientRect().height).to.be.at.least(44);
  });
});

describe('astig-sight: numbers', () => {
  it('takes distance and pupil with point or comma, and the usual from an empty field', async () => {
    const sight = await Sight.open(html`<astig-sight scene="reading"></astig-sight>`);
    await sight.click(sight.find('summary'));
    await sight.fill('distance', '0.3');
    await sight.fill('pupil', '4,5 mm');
    expect([sight.view.distance, sight.view.pupil]).to.deep.equal([0.3, 4.5]);
    expect(sight.text('.notes')).to.contain('Seen from 0.3 m');
    await sight.fill('pupil', '٥');
    expect(sight.view.pupil).to.equal(5);
    await sight.fill('distance', '');
    expect(sight.view.distance).to.equal(null);
    expect(sight.find<HTMLInputElement>('#distance').value).to.equal('0.4');
  });

  for (const [id, text, message] of [
    ['distance', '40', 'Distance: 40 is refused; allowed is 3 to 8 m.'],
    ['pupil', '0', 'Pupil: 0 is refused; allowed is 1 to 9 mm.'],
    ['pupil', '12', 'Pupil: 12 is refused; allowed is 1 to 9 mm.'],
    ['pupil', 'wide', 'Pupil: “wide” is refused; allowed is 1 to 9 mm.'],
    ['distance', '1e1', 'Distance: “1e1” is refused; allowed is 3 to 8 m.'],
  ] as const) {
    it(`refuses ${id} ${text} in place, and keeps the pictures`, async () => {
      const sight = await Sight.open();
      await sight.click(sight.find('summary'));
      const good = sight.pixels('before');
      await sight.fill(id, text);
      expect(sight.text(`#${id}-note`)).to.equal(message);
      expect(sight.find(`#${id}`).getAttribute('aria-invalid')).to.equal('true');
      expect(sight.find<HTMLInputElement>(`#${id}`).value).to.equal(text);
      expect(difference(good, sight.pixels('before'))).to.equal(0);
      await sight.fill(id, '');
      expect(sight.find(`#${id}`).getAttribute('aria-invalid')).to.equal('false');
    });
  }

  it('puts back what it was on Escape', async () => {
    const sight = await Sight.open();
    await sight.click(sight.find('summary'));
    const input = sight.find<HTMLInputElement>('#pupil');
    input.focus();
    await sendKeys({ type: '99' });
    await press('Escape');
    await sight.view.updateComplete;
    expect(input.value).to.equal('3');
    await press('Tab');
    expect(sight.view.pupil).to.equal(null);
  });

  it('names what the page has set and could not be taken, and keeps the last good', async () => {
    const sight = await Sight.open(html`<astig-sight scene="shelf" pupil="4"></astig-sight>`);
    const good = sight.pixels('before');
    for (const [name, value] of [['scene', 'garden'], ['view', 'three'], ['pupil', '90'], ['distance', 'far'], ['in-focus', 'all'], ['acuity', 'stars']] as const) sight.view.setAttribute(name, value);
    await sight.view.ready;
    expect([...sight.root.querySelectorAll('[part=refused] li')].map((item) => item.textContent.replaceAll('\u00a0', ' '))).to.deep.equal([
      'Look at: “garden” is refused; allowed is chart, reading, street, shelf, picture.',
      'Show: “three” is refused; allowed is pair, divider.',
      'On the retina lies: “all” is refused; allowed is least-blur, front-line, back-line.',
      'Notation of the acuity: “stars” is refused; allowed is metres, feet, decimal, logmar.',
      'Distance: “far” is refused; allowed is 1 to 6 m.',
      'Pupil: 90 is refused; allowed is 1 to 9 mm.',
    ]);
    expect(difference(good, sight.pixels('before'))).to.equal(0);
  });

  it('says when the case has been given what it cannot take', async () => {
    const sight = await Sight.open();
    sight.eye.steepK = 99;
    await sight.view.ready;
    expect(sight.text('[part=refused]')).to.contain('the last good plan');
  });
});

describe('astig-sight: divider', () => {
  afterEach(() => resetMouse());

  it('is drawn where the picture before ends', async () => {
    const sight = await Sight.open(DIVIDER);
    await sight.set({ divider: 25 });
    sight.view.scrollIntoView();
    expect(Math.abs(knob(sight)[0] - along(sight, 25)[0])).to.be.at.most(1);
    expect(getComputedStyle(sight.find('.after canvas')).clipPath).to.equal('inset(0px 0px 0px 25%)');
  });

  it('follows the mouse from end to end', async () => {
    const sight = await Sight.open(DIVIDER);
    await bringIntoView(sight.find('.before canvas'));
    for (const percent of [20, 80, 0, 100, 37]) {
      await dragMouse(knob(sight), along(sight, percent));
      await sight.view.updateComplete;
      expect(Math.abs(sight.view.divider - percent), `to ${percent}`).to.be.at.most(1);
    }
  });

  it('jumps to a click on the picture', async () => {
    const sight = await Sight.open(DIVIDER);
    await bringIntoView(sight.find('.before canvas'));
    await sendMouse({ type: 'click', position: along(sight, 70) });
    await sight.view.updateComplete;
    expect(Math.abs(sight.view.divider - 70)).to.be.at.most(1);
  });

  itWith('touch', 'follows a finger', async () => {
    const sight = await Sight.open(DIVIDER);
    await bringIntoView(sight.find('.before canvas'));
    await dragTouch(knob(sight), along(sight, 82));
    expect(Math.abs(sight.view.divider - 82)).to.be.at.most(2);
  });

  it('moves by keys and speaks', async () => {
    const sight = await Sight.open(DIVIDER);
    const slider = sight.find<HTMLInputElement>('.cut');
    slider.focus();
    await press('ArrowRight');
    expect(sight.view.divider).to.equal(51);
    await press('Home');
    expect(sight.view.divider).to.equal(0);
    await press('End');
    await sight.view.updateComplete;
    expect(sight.view.divider).to.equal(100);
    expect(slider.getAttribute('aria-valuetext')).to.equal('Before is shown on 100\u00a0% of the width');
    expect(slider.getAttribute('aria-label')).to.equal('Divider between before and after');
  });

  it('begins where reading begins', async () => {
    const sight = await Sight.open(DIVIDER, MAPLE, 'ar');
    sight.eye.dir = 'rtl';
    await sight.set({ divider: 20 });
    await bringIntoView(sight.find('.before canvas'));
    expect(getComputedStyle(sight.find('.after canvas')).clipPath).to.equal('inset(0px 20% 0px 0px)');
    expect(Math.abs(knob(sight)[0] - along(sight, 80)[0])).to.be.at.most(1);
    await dragMouse(knob(sight), along(sight, 40));
    expect(Math.abs(sight.view.divider - 60)).to.be.at.most(1);
  });

  it('takes what the page sets and no nonsense', async () => {
    const sight = await Sight.open(html`<astig-sight view="divider" divider="30"></astig-sight>`);
    expect(sight.view.divider).to.equal(30);
    sight.view.setAttribute('divider', '400');
    expect(sight.view.divider).to.equal(50);
  });
});
