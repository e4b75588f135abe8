import { expect, html } from '@open-wc/testing';
import { GAP_DIRECTIONS } from '../../core/sight.js';
import { LETTERS, ringPath } from '../../components/sight/scenes/letters.js';
import type { Letter } from '../../components/sight/scenes/letters.js';
import { CHART_ACUITIES, SIDE, sceneDegrees } from '../../components/sight/sight.scenes.js';
import { MAPLE, Sight, difference } from './sight-support.js';

/** px of one fifth of a sign. */
const UNIT = 80;

/** A sign in black on white, with a margin of one fifth. */
function drawnSign(path: string): (x: number, y: number) => boolean {
  const canvas = document.createElement('canvas');
  canvas.width = canvas.height = 7 * UNIT;
  const context = canvas.getContext('2d', { willReadFrequently: true })!;
  context.setTransform(UNIT, 0, 0, UNIT, UNIT, UNIT);
  context.fill(new Path2D(path));
  const { data, width } = context.getImageData(0, 0, canvas.width, canvas.height);
  return (x, y) => data[4 * (Math.floor((y + 1) * UNIT) * width + Math.floor((x + 1) * UNIT)) + 3]! > 127;
}

/** How far the same colour goes on through a point in a direction, in fifths. */
function run(dark: (x: number, y: number) => boolean, x: number, y: number, degrees: number): number {
  const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  const colour = dark(x, y);
  const STEP = 1 / 400;
  let steps = 0;
  for (const way of [1, -1]) for (let t = STEP; t < 3 && dark(x + way * t * c, y + way * t * s) === colour; t += STEP) steps += 1;
  return steps * STEP;
}

/** Where strokes, and the spaces of E and F, are measured: a point in their middle and the direction across them, y downwards. */
const PROBES: Record<Letter, [x: number, y: number, degrees: number][]> = {
  D: [[0.5, 2.5, 0], [1.5, 0.5, 90], [4.5, 2.5, 0], [2.5 + 2 * Math.SQRT1_2, 2.5 + 2 * Math.SQRT1_2, 45]],
  E: [[0.5, 1.5, 0], [4, 0.5, 90], [4, 2.5, 90], [4, 4.5, 90], [3, 1.5, 90], [3, 3.5, 90]],
  F: [[0.5, 4, 0], [4, 0.5, 90], [4, 2.5, 90], [3, 1.5, 90]],
  H: [[0.5, 1, 0], [4.5, 4, 0], [2.5, 2.5, 90]],
  L: [[0.5, 1, 0], [4, 4.5, 90]],
  N: [[0.5, 4, 0], [4.5, 1, 0], [2.5, 2.5, 90 + (Math.atan2(3.471, 3) * 180) / Math.PI]],
  O: [[0.5, 2.5, 0], [2.5, 0.5, 90], [2.5 - 2 * Math.SQRT1_2, 2.5 + 2 * Math.SQRT1_2, 135]],
  P: [[0.5, 4, 0], [2, 0.5, 90], [2, 2.5, 90], [4.5, 1.5, 0]],
  T: [[2.5, 3, 0], [4, 0.5, 90]],
  U: [[0.5, 1, 0], [4.5, 1, 0], [2.5, 4.5, 90]],
  V: [[0.926, 1, 90 + (Math.atan2(5, 1.95) * 180) / Math.PI], [4.074, 1, 90 - (Math.atan2(5, 1.95) * 180) / Math.PI]],
  Z: [[1, 0.5, 90], [4, 4.5, 90], [2.5, 2.5, (Math.atan2(3.471, 3) * 180) / Math.PI]],
};

describe('optotypes', () => {
  for (const letter of Object.keys(LETTERS) as Letter[]) {
    it(`${letter} has strokes of one fifth and fills its grid`, () => {
      const dark = drawnSign(LETTERS[letter]);
      for (const [x, y, degrees] of PROBES[letter]) {
        expect(run(dark, x, y, degrees), `at ${x} ${y}`).to.be.closeTo(1, 0.04);
      }
      const rows = Array.from({ length: 700 }, (_, i) => i / 100 - 1).filter((y) => Array.from({ length: 100 }, (_, i) => i / 20).some((x) => dark(x, y)));
      expect([rows[0], rows.at(-1)!].map((y) => Math.round(y! * 10) / 10)).to.deep.equal([0, 5]);
    });
  }

  for (const gap of GAP_DIRECTIONS) {
    it(`the ring that is open at ${gap}° is five gaps wide, one thick, and open by one`, () => {
      const dark = drawnSign(ringPath(gap));
      const [c, s] = [Math.cos((gap * Math.PI) / 180), -Math.sin((gap * Math.PI) / 180)];
      // In the gap, across it; on the other side, through the stroke.
      expect(dark(2.5 + 2 * c, 2.5 + 2 * s)).to.equal(false);
      expect(run(dark, 2.5 + 2 * c, 2.5 + 2 * s, 90 - gap)).to.be.closeTo(1, 0.04);
      expect(run(dark, 2.5 - 2 * c, 2.5 - 2 * s, -gap)).to.be.closeTo(1, 0.04);
      expect(run(dark, 2.5, 2.5, 90 - gap)).to.be.closeTo(3, 0.04);
    });
  }
});

describe('astig-sight: the chart', () => {
  it('has lines of the stated acuity: five minutes of arc over the acuity, at six metres', async () => {
    const sight = await Sight.open(html`<astig-sight glasses></astig-sight>`);
    const { data, width } = sight.pixels('before');
    const dark = Array.from({ length: SIDE }, (_, y) => Array.from({ length: SIDE / 2 }, (_, x) => data[4 * (y * width + x)]!).some((value) => value < 110));
    const heights: number[] = [];
    dark.forEach((on, y) => {
      if (on && !dark[y - 1]) heights.push(0);
      if (on) heights[heights.length - 1]! += 1;
    });
    const minutesPerPixel = (sceneDegrees('chart', 6, 20) / SIDE) * 60;
    expect(heights).to.have.length(CHART_ACUITIES.length);
    heights.forEach((height, i) => expect(height * minutesPerPixel, `line ${i + 1}`).to.be.closeTo(5 / CHART_ACUITIES[i]!, 0.6));
    expect(sight.text('.notes')).to.contain('6/60, 6/30, 6/19, 6/12, 6/9.5, 6/7.5, 6/6, 6/4.8.');
  });

  it('is read with less from nearby', async () => {
    const sight = await Sight.open(html`<astig-sight distance="3"></astig-sight>`);
    expect(sight.text('.notes')).to.contain('6/120, 6/60, 6/38, 6/24, 6/19, 6/15, 6/12, 6/9.6.');
  });
});

describe('astig-sight: scenes as SVG', () => {
  it('are the same drawing as the pixels', async () => {
    const sight = await Sight.open(html`<astig-sight glasses></astig-sight>`, MAPLE);
    for (const scene of ['chart', 'street', 'shelf'] as const) {
      await sight.set({ scene });
      const drawing = sight.choice('scene', scene).querySelector('svg')!.cloneNode(true) as SVGSVGElement;
      drawing.setAttribute('width', `${SIDE}`);
      drawing.setAttribute('height', `${SIDE}`);
      const image = new Image();
      image.src = `data:image/svg+xml,${encodeURIComponent(new XMLSerializer().serializeToString(drawing))}`;
      await image.decode();
      const canvas = document.createElement('canvas');
      canvas.width = canvas.height = SIDE;
      const context = canvas.getContext('2d', { willReadFrequently: true })!;
      context.drawImage(image, 0, 0, SIDE, SIDE);
      const shown = sight.pixels('before');
      const drawn = context.getImageData(0, 0, SIDE, SIDE);
      let off = 0;
      for (let i = 0; i < drawn.data.length; i += 1) if (Math.abs(drawn.data[i]! - shown.data[i]!) > 24) off += 1;
      expect(off / drawn.data.length, scene).to.be.below(0.002);
      expect(difference(shown, drawn as never)).to.be.below(256);
    }
  });
});
