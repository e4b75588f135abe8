import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { AstigCase } from '../../components/case/case.js';
import { INVENTED_SLIPS, INVENTED_TRUTH, inventedResults } from '../../stories/results.js';
import { click, opened, settled, text } from './outcomes-support.js';
import { listen, until } from './support.js';

describe('<astig-outcomes>', () => {
  it('counts the good rows and says why the others are not', async () => {
    const { root } = await opened(`${inventedResults(40)}\n${INVENTED_SLIPS}`);
    expect(text(root, '[role=status]')).to.equal('Eyes counted: 40 of 44.');
    expect(text(root, '.refusals summary')).to.equal('Rows that are not counted: 4');
    expect(root.querySelectorAll('.refusals dt').length).to.equal(4);
    expect(text(root, 'tr[data-series=induced] td')).to.equal('40');
  });

  it('gives own figures to the case as one change that can be taken back', async () => {
    const { eye, root } = await opened(inventedResults(400));
    const log = listen(eye);
    click(root, '.give');
    expect(log.changes.map(({ source }) => source)).to.deep.equal(['astig-outcomes give']);
    expect(eye.incisionFlattening).to.be.closeTo(INVENTED_TRUTH.flattening, 0.06);
    expect(eye.plan.ownFigures!.incision!.eyes).to.equal(400);
    eye.undo();
    expect(eye.incisionFlattening === null).to.equal(true);
  });

  it('advises nothing from 12 eyes', async () => {
    const { root } = await opened(inventedResults(12));
    expect(root.querySelector('.give') === null).to.equal(true);
    expect(root.textContent).to.contain('Own figures are given from 20 eyes on');
  });

  it('walks the list by keys and marks the eye in the diagram', async () => {
    const { view, root } = await opened(inventedResults(30));
    root.querySelector<HTMLElement>('[role=listbox]')!.focus();
    await sendKeys({ press: 'End' });
    await settled(view);
    expect(text(root, '[aria-selected=true]')).to.contain('invented 30');
    expect(root.querySelectorAll('.chosen').length).to.equal(3);
  });

  it('reads again when a column is corrected', async () => {
    const { view, root } = await opened(inventedResults(30).replace('astigmatism after', 'thing'));
    expect(text(root, '[role=status]')).to.equal('Eyes counted: 0 of 30.');
    const select = root.querySelectorAll('select')[4]!;
    select.value = 'magnitudeAfter';
    select.dispatchEvent(new Event('change', { bubbles: true }));
    await settled(view);
    expect(text(root, '[role=status]')).to.equal('Eyes counted: 30 of 30.');
  });

  it('asks what a heading means that could be a power or a meridian, with its first figures, and guesses nothing', async () => {
    const { view, root } = await opened(inventedResults(30).replace('steep meridian before', 'Mesure du méridien cambré avant'));
    expect(text(root, '[role=status]')).to.equal('Eyes counted: 0 of 30.');
    expect(root.querySelector<HTMLDetailsElement>('.columns')!.open).to.equal(true);
    const row = root.querySelectorAll('.columns li')[3]!;
    expect(row.querySelector('select')!.value).to.equal('');
    expect([...row.querySelectorAll('p')].map(({ textContent }) => textContent).join(' ')).to.match(/^First rows: \d+ · .* Say which it is\.$/);
    const select = row.querySelector('select')!;
    select.value = 'meridianBefore';
    select.dispatchEvent(new Event('change', { bubbles: true }));
    await settled(view);
    expect(text(root, '[role=status]')).to.equal('Eyes counted: 30 of 30.');
  });

  it('gives no figures of meridians that look like readings', async () => {
    const rows = Array.from({ length: 30 }, (_, index) => `right;1,00;${42 + (index % 5)};0,75;90;180;2,4`);
    const { eye, root } = await opened(['eye;astigmatism before;meridianBefore;astigmatism after;steep meridian after;incision site;incision width', ...rows].join('\n'));
    expect(text(root, '.error')).to.contain('Are they degrees?');
    const log = listen(eye);
    expect(root.querySelector('.give')!.getAttribute('aria-disabled')).to.equal('true');
    click(root, '.give');
    expect([log.changes.length, eye.incisionFlattening === null]).to.deep.equal([0, true]);
  });

  it('takes 100 000 eyes without holding the page, and paints them', async () => {
    const data = inventedResults(100_000);
    // How often the page gets a turn of its own while it waits: one that is held gets one or two.
    let turns = 0;
    const timer = setInterval(() => (turns += 1), 10);
    const { root, view } = await opened(data);
    clearInterval(timer);
    expect(text(root, '[role=status]')).to.equal('Eyes counted: 100000 of 100000.');
    expect(root.querySelectorAll('canvas').length).to.equal(1);
    expect(turns).to.be.above(20);
    expect(view.toSVG()).to.match(/<path[^>]* d="M/);
  });

  it('leaves a column with names of people alone, and says so', async () => {
    const { root } = await opened(inventedResults(25).replace('label;', 'Name;'));
    expect(text(root, '.columns ul')).to.contain('Names and dates of birth are not needed');
    expect(root.textContent).not.to.contain('invented 1,');
  });

  it('leaves the focus where a table is chosen when the next one has no eye to stand on', async () => {
    const { view, root } = await opened(inventedResults(12));
    root.querySelector<HTMLElement>('.next')!.focus();
    view.data = '';
    await settled(view);
    expect(root.querySelector('.next') === null).to.equal(true);
    expect(root.activeElement?.localName).to.equal('input');
  });

  it('can be cancelled', async () => {
    const eye = await fixture<AstigCase>(html`<astig-case><astig-outcomes .data=${inventedResults(100_000)}></astig-outcomes></astig-case>`);
    const view = eye.querySelector('astig-outcomes')!;
    await view.updateComplete;
    await until(() => view.shadowRoot!.querySelector('.cancel'), 'The button that cancels');
    view.shadowRoot!.querySelector<HTMLElement>('.cancel')!.focus();
    click(view.shadowRoot!, '.cancel');
    await settled(view);
    expect(text(view.shadowRoot!, '[role=status]')).to.equal('Reading was cancelled.');
    expect(view.shadowRoot!.activeElement?.localName, 'the button has gone, and the focus is where a table is chosen').to.equal('input');
  });
});
