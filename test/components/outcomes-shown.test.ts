import { expect } from '@open-wc/testing';
import { emulate, itInEveryScheme, itWith } from '../engine.js';
import { inventedResults } from '../../stories/results.js';
import { click, opened, settled, text } from './outcomes-support.js';
import { press } from './support.js';
import { systemColours } from './system-colours.js';

/** Twenty good eyes, then one row for each thing that goes wrong in real tables; all invented. */
const HEADINGS = 'label;eye;flat K before;steep K before;steep meridian before;flat K after;steep K after;steep meridian after;incision site;age';
const GOOD = Array.from({ length: 20 }, (_, index) => `eye ${index + 1};right;43,00;44,50;${index % 2 ? 0 : 180};43,25;44,25;175;180;70`);
const BAD: [what: string, row: string, reason: RegExp][] = [
  ['mixed units', 'slip 1;right;43,00;7,50;90;43,25;44,25;90;180;70', /^Line 22 steep K before: “7,50” → the same unit as that of the other reading/],
  ['swapped flat and steep', 'slip 2;right;44,50;43,00;90;43,25;44,25;90;180;70', /^Line 23 steep K before: “43,00” → 44\.50 D or more, for the steep reading must not be flatter/],
  ['wrong side', 'slip 3;OU;43,00;44,50;90;43,25;44,25;90;180;70', /^Line 24 eye: “OU” → right or left/],
  ['absurd value', 'slip 4;right;43,00;44,50;90;43,25;445,0;90;180;70', /^Line 25 steep K after: “445,0” → \d+ to \d+/],
  ['meridian off the dial', 'slip 5;right;43,00;44,50;270;43,25;44,25;90;180;70', /^Line 26 steep meridian before: “270” → 0 to 180/],
  ['an eye twice', 'eye 7;right;43,00;46,50;90;43,25;44,25;90;180;70', /^Line 27 label: “eye 7” → each eye once, and line 8 has the same label and eye/],
  ['before without after', 'slip 7;right;43,00;44,50;90;;;;180;70', /^Line 28 flat K after: “” → a value/],
];
const TABLE = [HEADINGS, ...GOOD, ...BAD.map(([, row]) => row)].join('\n');

describe('bad rows among own results', () => {
  it('are recognised, explained and counted, and the rest is analysed', async () => {
    const { root } = await opened(TABLE);
    expect(text(root, '[role=status]')).to.equal('Eyes counted: 20 of 27.');
    expect(text(root, '.refusals summary')).to.equal('Rows that are not counted: 7');
    const told = [...root.querySelectorAll('.refusals dt')].map((line) => {
      const faults: string[] = [];
      for (let next = line.nextElementSibling; next?.localName === 'dd'; next = next.nextElementSibling) faults.push(next.textContent);
      return `${line.textContent} ${faults.join(' ')}`.replace(/[\u2066-\u2069]/g, '').replace(/\s+/g, ' ');
    });
    expect(told.length).to.equal(BAD.length);
    BAD.forEach(([what, , reason], index) => expect(told[index], what).to.match(reason));
    const counts = [...root.querySelectorAll('.refusals li')].map(({ textContent }) => Number(/(\d+) ×/.exec(textContent)![1]));
    expect(text(root, '.refusals ul')).to.contain('the steep meridian before: 1 × allowed is 0 to 180°');
    expect(counts.reduce((sum, rows) => sum + rows, 0)).to.equal(7);
    for (const series of ['before', 'after', 'induced']) expect(text(root, `tr[data-series=${series}] td`)).to.equal('20');
    expect(text(root, '.notes')).to.contain('Only the first of them is counted');
  });

  it('take 0 and 180 for one meridian', async () => {
    const { root } = await opened(TABLE);
    expect(text(root, 'tr[data-series=before] td:nth-of-type(2)')).to.match(/^1\.50 D @ 180°$/);
  });
});

describe('how own results are shown', () => {
  afterEach(() => emulate({}));

  it('walks by every key of a list', async () => {
    const { view, root } = await opened(inventedResults(35));
    root.querySelector<HTMLElement>('[role=listbox]')!.focus();
    for (const [key, eye] of [['ArrowDown', 1], ['ArrowDown', 2], ['ArrowUp', 1], ['ArrowUp', 1], ['PageDown', 11], ['End', 35], ['PageUp', 25], ['Home', 1]] as const) {
      await press(key);
      await settled(view);
      expect(text(root, '[aria-selected=true]'), key).to.contain(`invented ${eye},`);
      const active = root.querySelector('[role=listbox]')!.getAttribute('aria-activedescendant')!;
      expect(root.getElementById(active)!.getAttribute('aria-selected')).to.equal('true');
      expect(root.getElementById(active)!.getAttribute('aria-posinset')).to.equal(`${eye}`);
    }
  });

  it('gives the diagram away as a picture', async () => {
    const { view } = await opened(inventedResults(40));
    const file = new DOMParser().parseFromString(view.toSVG(), 'image/svg+xml');
    expect(file.querySelectorAll('parsererror').length).to.equal(0);
    expect(file.querySelectorAll('ellipse').length).to.equal(6);
    const image = await createImageBitmap(await view.toPNG({ width: 600 }));
    expect(image.width).to.equal(600);
    const canvas = new OffscreenCanvas(image.width, image.height);
    const context = canvas.getContext('2d')!;
    context.drawImage(image, 0, 0);
    const { data } = context.getImageData(0, 0, image.width, image.height);
    expect(new Set(Array.from({ length: data.length / 4 }, (_, at) => `${data[4 * at]} ${data[4 * at + 1]} ${data[4 * at + 2]}`)).size).to.be.above(20);
  });

  itInEveryScheme('has no fault that axe can find, with everything open', async () => {
    const { view, root } = await opened(TABLE);
    for (const details of root.querySelectorAll('details')) details.open = true;
    click(root, '[role=option]');
    await settled(view);
    await expect(view).to.be.accessible();
  });

  for (const [name, style] of [['360 px', 'inline-size: 360px'], ['360 px and text at 200 %', 'inline-size: 360px; font-size: 32px'], ['900 px', 'inline-size: 900px']] as const) {
    it(`is nowhere wider than its place: ${name}`, async () => {
      const { view, root } = await opened(TABLE, style);
      for (const details of root.querySelectorAll('details')) details.open = true;
      await settled(view);
      const { left, right } = view.getBoundingClientRect();
      const wide = [...root.querySelectorAll(':not(svg *)')].filter((element) => !element.parentElement?.closest('.scroll') && element.getBoundingClientRect().width > 0 && (element.getBoundingClientRect().right > right + 1 || element.getBoundingClientRect().left < left - 1));
      expect(wide.map((element) => `${element.localName}.${element.getAttribute('class')}`)).to.deep.equal([]);
      expect(view.scrollWidth).to.be.at.most(view.clientWidth + 1);
    });
  }

  it('is mirrored from right to left, but not the eye', async () => {
    const { root } = await opened(TABLE);
    const place = (): { text: string; start: number } => {
      const table = root.querySelector('table.figures')!.getBoundingClientRect();
      const first = root.querySelector('table.figures th')!.getBoundingClientRect();
      return { text: [...root.querySelectorAll('.diagram text')].map((label) => `${label.textContent} ${label.getAttribute('x')}`).join(), start: Math.round(first.left - table.left) };
    };
    const before = place();
    expect(before.start).to.equal(0);
    (root.host.parentElement as HTMLElement).dir = 'rtl';
    await settled(root.host as Parameters<typeof settled>[0]);
    const after = place();
    expect(after.text).to.equal(before.text);
    const table = root.querySelector('table.figures')!.getBoundingClientRect();
    expect(Math.round(table.right - root.querySelector('table.figures th')!.getBoundingClientRect().right)).to.equal(0);
    const [first, second] = [...root.querySelectorAll('.segments .segment')].map((label) => label.getBoundingClientRect().left);
    expect(first).to.be.above(second!);
  });

  itWith('forced colours', 'is drawn in colours of the system only', async () => {
    await emulate({ 'forced-colors': 'active' });
    const { root } = await opened(TABLE);
    const system = systemColours();
    for (const selector of ['.points.before', '.points.after', '.points.induced', '[part=mean-ellipse]', '[part=eyes-ellipse]', '[part=ring]']) {
      expect(system, selector).to.include(getComputedStyle(root.querySelector(selector)!).stroke);
    }
  });
});
