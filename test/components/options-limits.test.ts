import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { movesOf } from '../../components/internal/case-moves.js';
import { itInEveryScheme } from '../engine.js';
import { List, ROWAN, chances } from './options-support.js';
import { CEDAR, drawn, press } from './support.js';

describe('astig-options: what may be offered', () => {
  it('is set by attributes, which are properties too, and fires nothing', async () => {
    const list = await List.open(ROWAN, html`<astig-options widths="2.2, 2.75 mm" most-arcs="1" lenses="1,5 D;2" sites="temporal 90"></astig-options>`);
    expect(list.column('[part=chance]')).to.deep.equal(chances({ widths: [2.2, 2.75], arcs: 1, lenses: [1.5, 2], sites: ['temporal', 90] }));
    list.view.noArcs = true;
    list.view.noLens = true;
    list.view.removeAttribute('widths');
    list.view.sites = '45 STEEP';
    await list.view.ready;
    expect(list.column('[part=chance]')).to.deep.equal(chances({ arcs: 0, lenses: [], sites: [45, 'steep'] }));
    expect([list.view.mostArcs, ...list.counts]).to.deep.equal([1, 0, 0]);
  });

  it('is set in the form, which stays open and lets no native event out', async () => {
    const list = await List.open();
    const leaked: string[] = [];
    for (const type of ['input', 'change', 'astig-input', 'astig-change']) list.eye.addEventListener(type, () => leaked.push(type));
    await list.openForm();
    await list.fill('widths', '2.2 2.75');
    await list.click(list.find('[name=arcs][value="1"]'));
    await list.click(list.find('[name=site][value=superior]'));
    await list.fill('sites', '135');
    await list.click(list.find('[name=lens][value=no]'));
    const { widths, noArcs, mostArcs, sites, noLens } = list.view;
    expect({ widths, noArcs, mostArcs, sites, noLens }).to.deep.equal({ widths: '2.2 2.75', noArcs: false, mostArcs: 1, sites: 'temporal steep 135', noLens: true });
    expect(list.column('[part=chance]')).to.deep.equal(chances({ widths: [2.2, 2.75], arcs: 1, sites: ['temporal', 'steep', 135], lenses: [] }));
    expect([leaked, (list.find('.limits') as HTMLDetailsElement).open, list.text('.offered')]).to.deep.equal([[], true, 'entry temporal, steep or 135°; 2.2 mm or 2.75 mm; one arc; no lens']);
    expect(list.spoken).to.match(/^\d plans? in the list\.$/);
    await list.click(list.find('[name=arcs][value="0"]'));
    expect([list.view.noArcs, list.column('.plan').join().includes('arc')]).to.deep.equal([true, false]);
  });

  it('keeps a wrong text and refuses it in words; the last good list stands', async () => {
    const list = await List.open(ROWAN, html`<astig-options widths="2.2"></astig-options>`);
    await list.openForm();
    await list.fill('widths', '2.2 22');
    expect([list.value('widths'), list.view.widths, list.find('#widths').getAttribute('aria-invalid')]).to.deep.equal(['2.2 22', '2.2 22', 'true']);
    expect(list.note('widths')).to.equal('Widths of the blades: “22” is refused; allowed is 1.8 to 3.5 mm, at most 4, separated by spaces.');
    expect([list.spoken, list.column('[part=chance]')]).to.deep.equal([list.note('widths'), chances({ widths: [2.2] })]);
    // What else is set counts all the same, and so does another eye.
    await list.click(list.find('[name=lens][value=no]'));
    list.eye.steepK = 44;
    await list.view.ready;
    expect(list.column('[part=chance]')).to.deep.equal(chances({ widths: [2.2], lenses: [] }, { ...ROWAN, steepK: 44 }));
    await list.fill('widths', '');
    expect([list.find('#widths').getAttribute('aria-invalid'), list.column('[part=chance]')]).to.deep.equal(['false', chances({ lenses: [] }, { ...ROWAN, steepK: 44 })]);
  });

  for (const [name, text, value] of [
    ['sites', 'nasal', '“nasal”'],
    ['sites', '400', '“400”'],
    ['lenses', '1 two', '“two”'],
    ['lenses', '1 2 3 4 5 6 7 8 9 10 11 12 0.5', '“1 2 3'],
    ['widths', '<img src=x>', '“<img”'],
    ['most-arcs', '3', '“3”'],
    ['most-arcs', 'many', '“many”'],
  ] as const) {
    it(`refuses ${name}="${text}" as attribute`, async () => {
      const list = await List.open();
      list.view.setAttribute(name, text);
      await list.view.ready;
      expect(list.text('[part=refused]')).to.contain(`${value}`).and.contain('allowed is');
      expect([list.column('[part=chance]'), list.root.querySelector('img')]).to.deep.equal([chances(), null]);
      await list.openForm();
      expect([list.text('[part=refused]'), list.text('.error')?.includes(value)]).to.deep.equal([null, true]);
    });
  }

  it('wants at least one place of entry, and puts a text back at Escape', async () => {
    const list = await List.open();
    await list.openForm();
    for (const name of ['temporal', 'superior', 'steep']) await list.click(list.find(`[name=site][value=${name}]`));
    expect(list.note('sites')).to.contain('Places of entry').and.contain('is refused');
    expect([list.value('sites'), list.root.querySelectorAll('[name=site]:checked').length]).to.deep.equal(['', 0]);
    await list.click(list.find('[name=site][value=temporal]'));
    expect([list.view.sites, list.column('[part=chance]')]).to.deep.equal(['temporal', chances({ sites: ['temporal'] })]);
    list.find('#widths').focus();
    await sendKeys({ type: '3' });
    await press('Escape');
    await press('Tab');
    expect([list.value('widths'), list.view.widths]).to.deep.equal(['', '']);
  });
});

describe('astig-options: where it stands', () => {
  for (const width of [320, 600, 1200]) {
    it(`fits ${width} px at 16 and 32 px text, either way, with targets of 44 px`, async () => {
      const box = await fixture<HTMLElement>(html`<div><astig-case .plan=${CEDAR}><astig-options></astig-options></astig-case></div>`);
      const view = box.querySelector('astig-options')!;
      await view.ready;
      box.style.inlineSize = `${width}px`;
      for (const details of view.shadowRoot!.querySelectorAll('details')) details.open = true;
      for (const [size, dir] of [[16, 'ltr'], [32, 'ltr'], [32, 'rtl']] as const) {
        box.style.fontSize = `${size}px`;
        box.dir = dir;
        await drawn(view);
        expect(box.scrollWidth, `${size} px text, ${dir}`).to.be.at.most(box.clientWidth);
        const edges = box.getBoundingClientRect();
        for (const target of view.shadowRoot!.querySelectorAll('.sort, .sourced, [part=choose], summary, .segment, input[type=text]')) {
          const { height, width: wide, left, right } = target.getBoundingClientRect();
          expect(Math.min(height, wide), target.textContent!).to.be.at.least(43.99);
          expect(left >= edges.left - 0.5 && right <= edges.right + 0.5, target.textContent!).to.equal(true);
        }
      }
    });
  }

  it('is a table to assistive technology in every width', async () => {
    const list = await List.open();
    for (const width of [300, 700, 1200]) {
      list.view.style.inlineSize = `${width}px`;
      await drawn(list.view);
      const roles = [...list.root.querySelectorAll('table, thead, tbody, tr, th, td')].map((part) => part.getAttribute('role'));
      expect([...new Set(roles)].sort()).to.deep.equal(['cell', 'columnheader', 'row', 'rowgroup', 'rowheader', 'table']);
    }
  });

  itInEveryScheme('has no fault that axe can find', async () => {
    const list = await List.open({ ...CEDAR, risks: 'dry-eye' });
    await list.click(list.button(1));
    await expect(list.view).to.be.accessible();
    await list.openForm();
    await list.fill('widths', '9');
    await list.click(list.find('td summary'));
    await expect(list.view).to.be.accessible();
    list.view.style.inlineSize = '320px';
    movesOf(list.eye.model).move({ steepK: 45 }, 'test', null);
    await list.view.ready;
    await expect(list.view).to.be.accessible();
    list.view.readOnly = true;
    await list.view.ready;
    await expect(list.view).to.be.accessible();
  });
});
