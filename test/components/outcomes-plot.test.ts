import { expect } from '@open-wc/testing';
import { sendMouse } from '@web/test-runner-commands';
import { inventedResults } from '../../stories/results.js';
import { click, opened, settled, text } from './outcomes-support.js';
import { bringIntoView, onScreen } from './support.js';

/** Many enough to be painted. */
const MANY = inventedResults(2000);

/** Painted pixels, and the sum of all that is painted. */
function paintedIn(root: ShadowRoot): { pixels: number; sum: number } {
  const canvas = root.querySelector('canvas')!;
  const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
  let [pixels, sum] = [0, 0];
  for (let at = 0; at < data.length; at += 4) {
    if (data[at + 3] === 0) continue;
    pixels += 1;
    sum += data[at]! + 3 * data[at + 1]! + 7 * data[at + 2]!;
  }
  return { pixels, sum };
}

const toggle = (name: string): string => `.segment.${name} input`;

describe('the diagram of own results', () => {
  it('paints only the series that are chosen', async () => {
    const { view, root } = await opened(MANY);
    const all = paintedIn(root);
    expect(all.pixels).to.be.above(1000);
    const alone = [];
    for (const name of ['before', 'after', 'induced']) {
      for (const other of ['before', 'after', 'induced']) if (root.querySelector<HTMLInputElement>(toggle(other))!.checked !== (other === name)) click(root, toggle(other));
      await settled(view);
      expect([...root.querySelectorAll('[part=centroid][data-series]')].map((sign) => sign.getAttribute('data-series'))).to.deep.equal([name]);
      alone.push(paintedIn(root));
    }
    for (const { pixels } of alone) expect(pixels).to.be.within(500, all.pixels - 1);
    expect(new Set(alone.map(({ sum }) => sum)).size).to.equal(3);
    click(root, toggle('induced'));
    await settled(view);
    expect(paintedIn(root).pixels).to.equal(0);
    for (const name of ['before', 'after', 'induced']) click(root, toggle(name));
    await settled(view);
    expect(paintedIn(root)).to.deep.equal(all);
  });

  it('takes the eye that is clicked on, drawn or painted, and of the series that are seen only', async () => {
    for (const eyes of [30, 2000]) {
      const { view, root } = await opened(inventedResults(eyes));
      root.querySelector<HTMLElement>('[role=listbox]')!.focus();
      const svg = root.querySelector<SVGSVGElement>('.diagram svg')!;
      await bringIntoView(svg);
      click(root, toggle('before'));
      click(root, toggle('after'));
      await settled(view);
      // Any eye, then the place where its sign stands.
      click(root, '[role=option]:nth-child(7)');
      await settled(view);
      const chosen = root.querySelector<SVGCircleElement>('.chosen')!;
      const [x, y] = [chosen.cx.baseVal.value, chosen.cy.baseVal.value];
      click(root, '[role=option]:nth-child(2)');
      await settled(view);
      await bringIntoView(svg);
      await sendMouse({ type: 'click', position: onScreen(svg, x, y) });
      await settled(view);
      const taken = root.querySelector<SVGCircleElement>('.chosen')!;
      expect(Math.hypot(taken.cx.baseVal.value - x, taken.cy.baseVal.value - y)).to.be.below(2);
      expect(root.querySelectorAll('[aria-selected=true]').length).to.equal(1);
      if (eyes === 30) expect(text(root, '[aria-selected=true]')).to.contain('invented 7,');
    }
  });
});
