import { expect, fixture, html } from '@open-wc/testing';
import { sendMouse } from '@web/test-runner-commands';
import { suggestPlans } from '../../core/index.js';
import type { EyePlan, SuggestedPlan } from '../../core/index.js';
import type { AstigOptions } from '../../components/options/options.js';
import { movesOf } from '../../components/internal/case-moves.js';
import { List, ROWAN, chances } from './options-support.js';
import { CEDAR, bringIntoView, centreOf, dragMouse, drawn, listen, onEye, press, until } from './support.js';

describe('astig-options: the list', () => {
  it('is what the core suggests, best chance first, each plan in words and figures', async () => {
    const list = await List.open();
    const expected = suggestPlans(ROWAN);
    expect(expected.length).to.be.greaterThan(2);
    expect(list.column('[part=chance]')).to.deep.equal(chances());
    expect(list.column('.reason').map((text) => text.toLowerCase())).to.deep.equal(expected.map(({ reason }) => reason));
    const { plan, outcome, surgery } = expected.find(({ surgery: { arcs } }) => arcs === 1)!;
    const row = expected.findIndex((option) => option.plan === plan);
    expect(list.column('.plan')[row]).to.equal(`Entry ${plan.incisionSite}° superior, 2.4 mm; one arc of ${plan.arcLength}° at ${plan.arcSite}°`);
    expect(list.column('.remaining')[row]).to.equal(`${outcome.after.magnitude.toFixed(2)} D @ ${Math.round(outcome.after.meridian)}°`);
    expect(list.column('.surgery')[row]).to.equal(`one arc, ${surgery.arcDegrees}°; no lens; entry 2.4 mm`);
    expect(list.column('.plan').join()).to.match(/toric lens \d\.\d\d D on \d+°/);
    expect(list.root.textContent).to.not.match(/\bleft\b(?! eye)|1 in \d/i);
    expect(list.text('p.quiet')).to.contain('Estimates');
  });

  it('draws as many of the hundred marks full as the words say', async () => {
    const list = await List.open();
    const full = [...list.root.querySelectorAll('.bar .full')].map((path) => path.getAttribute('d')!.split('M').length - 1);
    expect(full).to.deep.equal(suggestPlans(ROWAN).map(({ ofHundred }) => ofHundred));
  });

  it('counts the cautions of a plan by level and opens their texts', async () => {
    const list = await List.open(CEDAR);
    const { outcome } = suggestPlans(CEDAR)[0]!;
    expect(list.column('.cautions summary')[0]).to.equal(`${outcome.cautions.length} × note`);
    await list.click(list.find('td summary'));
    expect(list.text('td details[open] li')).to.contain(outcome.cautions[0]!.text);
  });

  it('opens the sources of the figures', async () => {
    const list = await List.open();
    for (const [index, title] of ['remain', '100 eyes', 'Amount of surgery'].entries()) {
      await list.click(list.root.querySelectorAll('thead .sourced')[index]!);
      await until(() => list.text('.source:popover-open h2')?.includes(title), title);
      await press('Escape');
    }
  });

  it('sorts by its headings, by mouse and by keyboard, and says so', async () => {
    const list = await List.open();
    const { ranks } = list;
    expect([ranks, list.sorts]).to.deep.equal([ranks.map((_, index) => index + 1), ['none', 'descending', 'none']]);
    await list.click(list.find('[data-sort=remaining]'));
    const remaining = (): number[] => list.column('.remaining').map(Number.parseFloat);
    expect(remaining()).to.deep.equal(remaining().toSorted((a, b) => a - b));
    expect([list.sorts, list.spoken]).to.deep.equal([['ascending', 'none', 'none'], 'Sorted by what remains, least first.']);
    await press('Enter');
    await list.view.ready;
    expect(remaining()).to.deep.equal(remaining().toSorted((a, b) => b - a));
    expect([list.sorts[0], list.spoken]).to.deep.equal(['descending', 'Sorted by what remains, most first.']);
    await list.click(list.find('[data-sort=surgery]'));
    expect(list.column('.surgery')[0]).to.match(/^no arc; no lens/);
    await list.click(list.find('[data-sort=chance]'));
    expect([list.ranks, list.sorts[1], ...list.counts]).to.deep.equal([ranks, 'descending', 0, 0]);
  });

  it('says why there are no arcs', async () => {
    const list = await List.open({ ...ROWAN, risks: 'collagen' });
    expect(list.text('.against')).to.match(/^Arcs are not offered\. Rheumatoid .* should have no arcs\.$/);
    expect(list.column('.plan').join()).to.not.contain('arc');
    list.view.noArcs = true;
    await list.view.ready;
    expect(list.text('.against')).to.equal(null);
  });

  it('says that own figures of the plan count in every row', async () => {
    const list = await List.open({ ...ROWAN, incisionFlattening: 0.35 });
    expect(list.text('.own')).to.contain('0.35 D');
    expect(list.column('[part=chance]')).to.deep.equal(chances({}, { ...ROWAN, incisionFlattening: 0.35 }));
  });

  it('says so without a case, and shows the last good plan beside what is refused', async () => {
    const alone = await fixture<AstigOptions>(html`<astig-options></astig-options>`);
    expect(alone.shadowRoot!.textContent).to.contain('Nothing to show yet');
    const list = await List.open();
    list.eye.steepK = 99;
    await list.view.ready;
    expect(list.text('[part=refused]')).to.contain('steepK').and.contain('99').and.contain('28 to 75 D');
    await list.click(list.button(2));
    expect([list.button(2).getAttribute('aria-disabled'), ...list.counts, list.column('[part=chance]')]).to.deep.equal(['true', 0, 0, chances()]);
  });
});

/** The list itself: another one is put in its place by every search. */
function found({ view }: List): { options: SuggestedPlan[] } {
  return (view as unknown as { search: { found: { options: SuggestedPlan[] } } }).search.found;
}

describe('astig-options: choosing', () => {
  it('sets what is planned and nothing else, by one click that can be taken back', async () => {
    const list = await List.open();
    const before = list.eye.plan;
    const { plan } = suggestPlans(ROWAN)[1]!;
    await list.click(list.button(2));
    expect(list.counts).to.deep.equal([1, 1]);
    expect(list.log.changes[0]!.source).to.equal('astig-options choose');
    expect({ ...list.eye.plan, arcLength: plan.arcLength }).to.deep.equal(plan);
    expect([list.inUse, list.text('[part~=in-use] .used'), list.text('[part~=in-use] [part=choose]')]).to.deep.equal([[2], 'in use', 'In use, number 2']);
    expect(list.spoken).to.match(/^Plan 2 is in use: Entry /);
    await list.click(list.button(2));
    expect(list.counts).to.deep.equal([1, 1]);
    list.eye.undo();
    await list.view.ready;
    expect([list.eye.plan, list.inUse]).to.deep.equal([before, []]);
  });

  it('works by keyboard alone, keeps the focus, and is undone by Ctrl+Z', async () => {
    const list = await List.open();
    const before = list.eye.plan;
    list.find('.limits > summary').focus();
    const focused = (): string | undefined => (list.root.activeElement as HTMLElement | null)?.dataset['rank'];
    for (let tabs = 0; tabs < 40 && focused() !== '1'; tabs += 1) await press('Tab');
    await press('Enter');
    await list.view.ready;
    expect([focused(), list.inUse, ...list.counts]).to.deep.equal(['1', [1], 1, 1]);
    await press('Control+z');
    await list.view.ready;
    expect([list.eye.plan, focused()]).to.deep.equal([before, '1']);
  });

  it('keeps the list when a plan of another width is chosen', async () => {
    const list = await List.open(ROWAN, html`<astig-options widths="2.4 3"></astig-options>`);
    const words = (): string[] => list.column('.plan').map((text) => text.replace(' in use', ''));
    const before = words();
    const first = found(list);
    const wide = before.findIndex((text) => text.includes('3.0 mm'));
    await list.click(list.button(wide + 1));
    expect([list.eye.plan.incisionWidth, list.inUse]).to.deep.equal([3, [wide + 1]]);
    expect([words(), found(list) === first]).to.deep.equal([before, true]);
  });

  it('marks the present plan, whoever has planned it, and holds it against the list', async () => {
    const list = await List.open();
    expect(list.text('[part=present]')).to.contain('Entry 0° temporal, 2.4 mm:').and.contain('not in this list');
    list.eye.plan = suggestPlans(ROWAN)[0]!.plan;
    await list.view.ready;
    expect([list.inUse, list.text('[part=present]')!.includes('plan 1 of this list')]).to.deep.equal([[1], true]);
  });

  it('has no form and no buttons where it is read-only', async () => {
    const list = await List.open(ROWAN, html`<astig-options read-only widths="9"></astig-options>`);
    expect([list.text('.limits'), list.text('[part=choose]'), list.text('.choose')]).to.deep.equal([null, null, null]);
    expect(list.text('[part=refused]')).to.contain('“9” is refused');
    expect(list.column('[part=chance]')).to.deep.equal(chances());
    list.view.readOnly = false;
    list.eye.readOnly = true;
    list.eye.requestUpdate();
    await list.view.ready;
    expect(list.text('[part=choose]')).to.equal(null);
  });
});

describe('astig-options: when it is calculated', () => {
  const withCornea = html`<astig-options></astig-options><astig-cornea></astig-cornea>`;

  it('is not touched by a drag of what is planned', async () => {
    const list = await List.open(CEDAR, withCornea);
    const cornea = list.eye.querySelector('astig-cornea')!;
    await drawn(cornea);
    await bringIntoView(cornea);
    const before = list.column('.plan');
    const first = found(list);
    await dragMouse(centreOf(cornea, '[part~="incision-handle"]'), onEye(cornea, 100, 6.75), { hold: true });
    await drawn(list.view);
    expect(list.eye.model.moving).to.equal(true);
    expect([list.column('.plan'), found(list) === first, list.find('table').getAttribute('aria-busy')]).to.deep.equal([before, true, 'false']);
    expect(list.text('[part=present]')).to.contain(`Entry ${list.eye.incisionSite}°`);
    await sendMouse({ type: 'up' });
    await list.view.ready;
    expect([list.column('.plan'), found(list) === first]).to.deep.equal([before, true]);
  });

  it('keeps the old list, marked, while the eye itself is being changed, and refreshes it afterwards', async () => {
    const list = await List.open();
    const { model } = list.eye;
    movesOf(model).move({ steepK: 46 }, 'test', null);
    await list.view.ready;
    expect([list.text('caption'), list.find('table').getAttribute('aria-busy')]).to.deep.equal(['The eye is being changed: this list will be refreshed when you let go.', 'true']);
    expect(list.column('[part=chance]')).to.deep.equal(chances());
    await list.click(list.button(1));
    expect(list.eye.plan.incisionSite).to.equal(0);
    movesOf(model).commit('test', null);
    await list.view.ready;
    expect([list.column('[part=chance]'), list.find('table').getAttribute('aria-busy')]).to.deep.equal([chances({}, { ...ROWAN, steepK: 46 }), 'false']);
  });

  it('is calculated anew for whatever of the eye changes, and for nothing that is planned', async () => {
    const list = await List.open({ ...ROWAN, arcCount: 1, arcSite: 90 });
    const { eye } = list;
    const changes: EyePlan[] = [
      { eye: 'right' },
      { flatK: 42 },
      { steepK: 45 },
      { steepMeridian: 40 },
      { age: 45 },
      { backSurface: 'omitted' },
      { incisionWidth: 3 },
      { incisionFlattening: 0.6 },
      { arcZone: 9 },
      { arcDepth: 350 },
      { arcMethod: 'laser' },
      { localThickness: 500 },
      { arcFlattening: 0.3 },
      { risks: 'radial-cuts' },
      { ownFigures: { incision: { flattening: 0.1, sd: 0.3 } } },
    ];
    for (const change of changes) {
      const before = found(list);
      Object.assign(eye, change);
      await list.view.ready;
      const shown = found(list).options.map(({ plan, ofHundred }) => ({ plan, ofHundred }));
      expect(shown, JSON.stringify(change)).to.deep.equal(suggestPlans(eye.plan).map(({ plan, ofHundred }) => ({ plan, ofHundred })));
      expect(found(list) === before, JSON.stringify(change)).to.equal(false);
    }
    const last = found(list);
    Object.assign(eye, { incisionSite: 10, arcSite: 200, arcLength: 60, arcCount: 2, lensCylinder: 2, lensMeridian: 90 });
    await list.view.ready;
    expect(found(list) === last).to.equal(true);
  });

  it('refreshes without idle moments too, and forgets about it when it is taken out', async () => {
    const { requestIdleCallback } = window;
    Object.assign(window, { requestIdleCallback: undefined });
    try {
      const list = await List.open();
      list.eye.steepK = 45;
      await list.view.ready;
      expect(list.column('[part=chance]')).to.deep.equal(chances({}, { ...ROWAN, steepK: 45 }));
    } finally {
      Object.assign(window, { requestIdleCallback });
    }
    const list = await List.open();
    list.eye.steepK = 46;
    await list.eye.updateComplete;
    list.view.remove();
    await list.view.ready;
    list.eye.append(list.view);
    await list.view.ready;
    expect(list.column('[part=chance]')).to.deep.equal(chances({}, { ...ROWAN, steepK: 46 }));
  });

  it('follows `for` to another case, at once', async () => {
    const root = await fixture(html`<div><astig-case id="one" .plan=${ROWAN}></astig-case><astig-case id="two" .plan=${CEDAR}></astig-case><astig-options for="one"></astig-options></div>`);
    const view = root.querySelector('astig-options')!;
    const list = new List(root.querySelector('#two')!, view, listen(root));
    await view.ready;
    expect(list.column('[part=chance]')).to.deep.equal(chances());
    view.for = 'two';
    await view.updateComplete;
    expect(list.column('[part=chance]')).to.deep.equal(chances({}, CEDAR));
  });
});
