import { expect, html } from '@open-wc/testing';
import { resetMouse, sendMouse } from '@web/test-runner-commands';
import { evaluatePlan } from '../../core/index.js';
import { Blurrer } from '../../core/sight.js';
import '../../components/cornea/define.js';
import { blurMinutes, corneaBefore, focusError } from '../../components/sight/sight.optics.js';
import { SCENES, SIDE, sceneDegrees } from '../../components/sight/sight.scenes.js';
import { MAPLE, Sight, darkest, difference, mirrored, painted, told } from './sight-support.js';
import { bringIntoView, centreOf, onEye, until } from './support.js';

/** Four thin lines far from each other: upright, flat, and both slanting ones, named as the onlooker sees them. */
const LINES = { upright: [100, 100], flat: [400, 100], rising: [100, 400], falling: [400, 400] } as const;
type Line = keyof typeof LINES;

const CROSSES = painted(512, (context) => {
  const draw = (line: Line, dx: number, dy: number): void => {
    const [x, y] = LINES[line];
    context.lineWidth = 3;
    context.beginPath();
    context.moveTo(x - dx, y - dy);
    context.lineTo(x + dx, y + dy);
    context.stroke();
  };
  draw('upright', 0, 80);
  draw('flat', 80, 0);
  draw('rising', 60, -60);
  draw('falling', 60, 60);
});

const own = (src: string, alt = '') => html`<astig-sight scene="picture"><img slot="picture" src=${src} alt=${alt} /></astig-sight>`;

async function linesOf(steepMeridian: number, inFocus: string): Promise<Record<Line, number>> {
  const sight = await Sight.open(own(CROSSES), { ...MAPLE, steepMeridian });
  await sight.set({ inFocus });
  const shown = sight.pixels('before');
  return Object.fromEntries(Object.entries(LINES).map(([line, [x, y]]) => [line, darkest(shown, x, y)])) as Record<Line, number>;
}

describe('the error in focus of a cornea', () => {
  it('is a minus cylinder whose axis is the flat meridian, with a spherical equivalent of zero', () => {
    expect(focusError({ magnitude: 2, meridian: 90 }, 'least-blur')).to.deep.equal({ sphere: 1, cylinder: -2, axis: 180 });
    expect(focusError({ magnitude: 1, meridian: 180 }, 'least-blur')).to.deep.equal({ sphere: 0.5, cylinder: -1, axis: 90 });
    expect(focusError({ magnitude: 1.5, meridian: 20 }, 'least-blur')).to.deep.equal({ sphere: 0.75, cylinder: -1.5, axis: 110 });
  });

  it('has no error along one meridian when a focal line is in focus', () => {
    // Back line: the flat meridian, along the axis, is right. Front line: the steep one, across it.
    expect(focusError({ magnitude: 2, meridian: 90 }, 'back-line')).to.deep.equal({ sphere: 0, cylinder: -2, axis: 180 });
    expect(focusError({ magnitude: 2, meridian: 90 }, 'front-line')).to.deep.equal({ sphere: 2, cylinder: -2, axis: 180 });
  });

  it('is as wide as pupil times dioptres', () => {
    // 3 mm × 0.5 D = 1.5 mrad = 5.16 minutes of arc.
    expect(blurMinutes(1, 3, 'least-blur')).to.be.closeTo(5.157, 0.001);
    expect(blurMinutes(1, 3, 'back-line')).to.be.closeTo(10.313, 0.001);
  });

  it('counts the back surface before surgery too, when the plan does', () => {
    const plan = { ...MAPLE, steepMeridian: 180 };
    expect(corneaBefore(evaluatePlan(plan)).magnitude).to.be.closeTo(2, 1e-9);
    expect(corneaBefore(evaluatePlan({ ...plan, backSurface: 'typical' })).magnitude).to.be.closeTo(2.27, 1e-9);
    expect(corneaBefore(evaluatePlan({ ...plan, backSurface: '0.50@90' })).magnitude).to.be.closeTo(1.5, 1e-9);
  });
});

describe('astig-sight: directions', () => {
  it('shows nothing but sharp lines with glasses', async () => {
    const sight = await Sight.open(own(CROSSES));
    await sight.set({ glasses: true });
    for (const side of ['before', 'after'] as const) {
      for (const [x, y] of Object.values(LINES)) expect(darkest(sight.pixels(side), x, y)).to.be.at.most(2);
    }
  });

  it('with the rule, keeps upright lines sharp at the back line and flat ones at the front line', async () => {
    const back = await linesOf(90, 'back-line');
    const front = await linesOf(90, 'front-line');
    expect(back.upright).to.be.at.most(2);
    expect(front.flat).to.be.at.most(2);
    for (const pale of [back.flat, back.rising, back.falling, front.upright, front.rising, front.falling]) expect(pale).to.be.at.least(120);
  });

  it('against the rule, the other way round', async () => {
    const back = await linesOf(180, 'back-line');
    const front = await linesOf(180, 'front-line');
    expect(back.flat).to.be.at.most(2);
    expect(front.upright).to.be.at.most(2);
    for (const pale of [back.upright, back.rising, back.falling, front.flat, front.rising, front.falling]) expect(pale).to.be.at.least(120);
  });

  it('oblique, shows the dial as a mirror does: a steep meridian of 45° keeps lines that fall to the right', async () => {
    const at45 = await linesOf(45, 'back-line');
    const at135 = await linesOf(135, 'back-line');
    expect(at45.falling).to.be.at.most(10);
    expect(at135.rising).to.be.at.most(10);
    for (const pale of [at45.rising, at45.upright, at45.flat, at135.falling, at135.upright, at135.flat]) expect(pale).to.be.at.least(120);
  });

  it('blurs a mirror image like the mirrored eye', async () => {
    const symmetrical = painted(512, (context) => {
      for (const x of [60, 200, 312, 452]) context.fillRect(x - 8, 60, 16, 300);
      context.fillRect(30, 400, 452, 12);
    });
    const pictures = [];
    for (const steepMeridian of [30, 150]) {
      const sight = await Sight.open(own(symmetrical), { ...MAPLE, steepMeridian });
      await sight.set({ inFocus: 'back-line' });
      pictures.push(sight.pixels('before'));
    }
    expect(difference(pictures[0]!, pictures[1]!)).to.be.at.least(40);
    expect(difference(pictures[0]!, mirrored(pictures[1]!)), pictures.map(told).join('; ')).to.be.at.most(1);
  });

  it('blurs alike in every direction while the circle of least blur is in focus', async () => {
    const lines = await linesOf(20, 'least-blur');
    expect(lines.upright).to.be.at.least(100);
    expect(Math.abs(lines.upright - lines.flat)).to.be.at.most(1);
    expect(Math.abs(lines.rising - lines.falling)).to.be.at.most(1);
    const other = await linesOf(75, 'least-blur');
    expect(other).to.deep.equal(lines);
  });
});

describe('astig-sight: pictures', () => {
  afterEach(() => resetMouse());

  it('shows each scene as the core blurs it, by the angle that the scene spans', async () => {
    const sight = await Sight.open(html`<astig-sight glasses></astig-sight>`, { ...MAPLE, lensCylinder: 1.5, lensMeridian: 90 });
    for (const scene of ['chart', 'reading', 'street', 'shelf'] as const) {
      await sight.set({ scene, glasses: true });
      const sharp = sight.pixels('before');
      await sight.set({ glasses: false });
      const degreesPerPixel = sceneDegrees(scene, SCENES[scene].distance?.usual ?? 1, 20) / SIDE;
      const expected = new Blurrer(sharp).blur({ refraction: { sphere: 1, cylinder: -2, axis: 180 }, pupilMm: SCENES[scene].pupil, degreesPerPixel });
      expect(difference(sight.pixels('before'), expected), scene).to.be.at.most(1);
      const { magnitude } = sight.eye.outcome.after;
      const after = new Blurrer(sharp).blur({ refraction: { sphere: magnitude / 2, cylinder: -magnitude, axis: 180 }, pupilMm: SCENES[scene].pupil, degreesPerPixel });
      expect(difference(sight.pixels('after'), after), scene).to.be.at.most(1);
      expect(difference(sight.pixels('before'), sight.pixels('after')), scene).to.be.at.least(20);
    }
  });

  it('has the angles that the texts say', () => {
    expect(sceneDegrees('chart', 6, 20)).to.be.closeTo(3.82, 0.005);
    expect(sceneDegrees('reading', 0.4, 20)).to.be.closeTo(8.58, 0.005);
    expect(sceneDegrees('shelf', 3, 20)).to.be.closeTo(11.42, 0.005);
    expect(sceneDegrees('street', 3, 7)).to.equal(20);
    expect(sceneDegrees('picture', 3, 7)).to.equal(7);
  });

  it('follows distance and pupil', async () => {
    const sight = await Sight.open();
    const usual = sight.pixels('before');
    await sight.set({ distance: 3 });
    const near = sight.pixels('before');
    await sight.set({ distance: null, pupil: 6 });
    const wide = sight.pixels('before');
    // The largest letter's black: from nearby it is less blurred, through a wide pupil more.
    const black = (picture: typeof usual): number => darkest(picture, 105, 80, 20);
    expect(black(near)).to.be.below(black(usual) + 1);
    expect(black(wide)).to.be.above(black(usual) + 20);
    expect(sight.text('.notes')).to.contain('Seen from 6 m, the picture is 3.8° wide.');
  });

  it('follows a drag on the cornea beside it, and ends with the plan as it was let go', async () => {
    const sight = await Sight.open(html`<astig-cornea></astig-cornea><astig-sight scene="shelf"></astig-sight>`, { ...MAPLE, incisionSite: 180, incisionWidth: 3.2 });
    const cornea = sight.eye.querySelector('astig-cornea')!;
    await cornea.updateComplete;
    await bringIntoView(cornea);
    const start = sight.pixels('after');
    await sendMouse({ type: 'move', position: centreOf(cornea, '[part~="incision-handle"]') });
    await sendMouse({ type: 'down' });
    for (let degrees = 176; degrees >= 92; degrees -= 4) await sendMouse({ type: 'move', position: onEye(cornea, degrees, 6.75) });
    await until(() => difference(start, sight.pixels('after')) >= 10, 'the picture follows while the incision is still held');
    await sendMouse({ type: 'up' });
    await sight.view.ready;
    const followed = sight.pixels('after');
    const fresh = await Sight.open(html`<astig-sight scene="shelf"></astig-sight>`, sight.eye.plan);
    expect(difference(followed, fresh.pixels('after'))).to.equal(0);
  });

  it('keeps up with a hundred changes at once, newest last', async () => {
    const sight = await Sight.open();
    for (let i = 1; i <= 100; i += 1) {
      sight.eye.steepK = 42 + i / 40;
      await Promise.resolve();
    }
    await sight.view.ready;
    const fresh = await Sight.open(undefined, { ...MAPLE, steepK: 44.5 });
    expect(difference(sight.pixels('before'), fresh.pixels('before'))).to.equal(0);
  });

  it('comes back after it was taken out of the page', async () => {
    const sight = await Sight.open();
    const before = sight.pixels('before');
    const { view } = sight;
    view.remove();
    await view.ready;
    await sight.plan({ ...MAPLE, steepK: 43 });
    sight.eye.append(view);
    await view.ready;
    expect(difference(before, sight.pixels('before'))).to.be.at.least(20);
    const fresh = await Sight.open(undefined, { ...MAPLE, steepK: 43 });
    expect(difference(sight.pixels('before'), fresh.pixels('before'))).to.equal(0);
  });

  it('gives both pictures away as one file', async () => {
    const sight = await Sight.open(html`<astig-sight scene="street"></astig-sight>`);
    const file = new DOMParser().parseFromString(sight.view.toSVG(), 'image/svg+xml');
    expect(file.querySelector('parsererror')).to.equal(null);
    expect([...file.querySelectorAll('text')].map((text) => text.textContent)).to.deep.equal([
      'Before surgery',
      'Astigmatism 2.00\u00a0D\u00a0@\u00a090°',
      'After surgery, as expected',
      'Astigmatism 2.00\u00a0D\u00a0@\u00a090°',
      'A simulation of the blur from the cornea alone, not a promise.',
    ]);
    const png = await createImageBitmap(await sight.view.toPNG({ width: 548 }));
    expect(png.width).to.equal(548);
    const lonely = document.createElement('astig-sight');
    expect(() => lonely.toSVG()).to.throw('no pictures');
  });
});
