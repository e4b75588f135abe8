import { expect } from '@open-wc/testing';
import { resetMouse, sendKeys, sendMouse } from '@web/test-runner-commands';
import { itWith } from '../engine.js';
import { inDrawing, pencilFixture, said } from './pencil-support.js';
import { centreOf, dragMouse, dragTouch, drawn, press } from './support.js';

const KNOB = '.hit';

describe('astig-pencil: pointer', () => {
  afterEach(() => resetMouse());

  it('turns with the mouse, changes no plan, and tells the page', async () => {
    const { eye, view, root, log } = await pencilFixture();
    const { plan } = eye;
    await dragMouse(inDrawing({ root }, -100, 20), inDrawing({ root }, -60, 40));
    expect([view.turn, view.tilt]).to.deep.equal([40, 28]);
    expect([log.inputs.length, log.changes.length]).to.deep.equal([0, 0]);
    expect(eye.plan).to.deep.equal(plan);
    expect(log.views.map(({ settled }) => settled)).to.deep.equal([...Array<boolean>(log.views.length - 1).fill(false), true]);
    const last = log.views.at(-1)!;
    expect([last.turn, last.tilt, last.screen, last.source, last.bubbles, last.composed]).to.deep.equal([40, 28, 'retina', 'astig-pencil turn', true, true]);
  });

  it('lets what is near follow the pointer', async () => {
    const { view, root } = await pencilFixture({ set: { turn: '60', tilt: '0' } });
    // The front of the eye is nearer to a viewer at 60°, so it goes to the right when it is pulled there.
    const fronts = (): number => Math.min(...[...root.querySelectorAll<SVGEllipseElement>('.rim')].map((ellipse) => ellipse.transform.baseVal.consolidate()!.matrix.e));
    const start = fronts();
    await dragMouse(inDrawing({ root }, -100, 20), inDrawing({ root }, -50, 20));
    await drawn(view);
    expect(fronts()).to.be.above(start + 20);
  });

  it('moves the screen by its knob, as far as the pointer goes', async () => {
    const { view, root, log } = await pencilFixture({ set: { turn: '90', tilt: '0' } });
    const [x, y] = centreOf(view, KNOB);
    await dragMouse([x, y], [x - 40, y]);
    await drawn(view);
    expect(Math.abs(centreOf(view, KNOB)[0] - (x - 40))).to.be.at.most(2);
    expect(view.screen).to.be.a('number').and.to.be.below(0);
    expect(log.views.at(-1)!.screen).to.equal(view.screen);
    expect(log.views.at(-1)!.source).to.equal('astig-pencil screen');
    expect(said(root)).to.include(`Screen, ${Math.abs(Number(view.screen)).toFixed(2)} mm in front of the retina`);
    expect([view.turn, log.inputs.length, log.changes.length]).to.deep.equal([90, 0, 0]);
  });

  it('keeps the screen within what is drawn', async () => {
    const { view, root } = await pencilFixture({ set: { turn: '90', tilt: '0' } });
    const [x, y] = centreOf(view, KNOB);
    await dragMouse([x, y], [innerWidth - 2, y]);
    await drawn(view);
    const box = root.querySelector('svg')!.getBoundingClientRect();
    expect(centreOf(view, KNOB)[0]).to.be.below(box.right);
    expect(Number(root.querySelector<HTMLInputElement>('input.screen')!.value)).to.equal(Number(root.querySelector<HTMLInputElement>('input.screen')!.max));
  });

  it('puts everything back on Escape, and tells the page of nothing more', async () => {
    const { view, root, log } = await pencilFixture();
    await dragMouse(inDrawing({ root }, -100, 20), inDrawing({ root }, -20, 60), { hold: true });
    expect(view.turn).to.not.equal(60);
    await sendKeys({ press: 'Escape' });
    expect([view.turn, view.tilt, view.screen]).to.deep.equal([60, 18, 'retina']);
    await sendMouse({ type: 'up' });
    expect(log.views.some(({ settled }) => settled)).to.equal(false);
  });

  it('fires nothing at a click that moves nothing', async () => {
    const { root, log } = await pencilFixture();
    await sendMouse({ type: 'click', position: inDrawing({ root }, -100, 20) });
    expect(log.views.length).to.equal(0);
  });

  itWith('touch', 'turns by touch, and leaves the scrolling of the page to the browser', async () => {
    const { view, root, log } = await pencilFixture();
    await dragTouch(inDrawing({ root }, -100, 20), inDrawing({ root }, -40, 24));
    expect(view.turn).to.equal(30);
    expect(log.views.at(-1)!.settled).to.equal(true);
    expect(getComputedStyle(root.querySelector('svg')!).touchAction).to.equal('pan-y');
  });

  itWith('touch', 'undoes a touch that the system takes away', async () => {
    const { view, root, log } = await pencilFixture();
    await dragTouch(inDrawing({ root }, -100, 20), inDrawing({ root }, -40, 24), 'cancel');
    expect(view.turn).to.equal(60);
    expect(log.views.some(({ settled }) => settled)).to.equal(false);
  });

  for (const [name, style] of [['rotated and scaled', 'transform: rotate(30deg) scale(0.8); transform-origin: 200px 100px'], ['right to left', 'direction: rtl'], ['zoomed', 'zoom: 1.4']] as const) {
    it(`moves the screen exactly in a host: ${name}`, async () => {
      const { view } = await pencilFixture({ set: { turn: '80' }, style });
      const from = centreOf(view, KNOB);
      view.screen = -0.2;
      await drawn(view);
      const goal = centreOf(view, KNOB);
      view.screen = 'retina';
      await drawn(view);
      await dragMouse(from, goal);
      expect(view.screen).to.be.closeTo(-0.2, 0.02);
    });
  }

  it('is a still when read-only', async () => {
    const { view, root, log } = await pencilFixture({ set: { 'read-only': '' } });
    expect(root.querySelectorAll('input, .handle, .stops button').length).to.equal(0);
    await dragMouse(inDrawing({ root }, -100, 20), inDrawing({ root }, -40, 40));
    expect([view.turn, log.views.length]).to.deep.equal([60, 0]);
  });

  it('can be turned where the plan is read-only, since that changes nothing', async () => {
    const { eye, view, root } = await pencilFixture();
    eye.readOnly = true;
    await drawn(view);
    await dragMouse(inDrawing({ root }, -100, 20), inDrawing({ root }, -40, 20));
    expect(view.turn).to.equal(30);
  });
});

describe('astig-pencil: keys and controls', () => {
  const input = (root: ShadowRoot, name: string): HTMLInputElement => root.querySelector<HTMLInputElement>(`input.${name}`)!;

  it('moves everything by native sliders, each with a name, limits and a value in words', async () => {
    const { view, root, log } = await pencilFixture();
    const names = [...root.querySelectorAll<HTMLInputElement>('input[type=range]')].map((one) => [one.labels![0]!.textContent.trim(), one.className, one.min, one.max]);
    expect(names.map(([label]) => label)).to.deep.equal(['Screen', 'Turn', 'Tilt']);
    input(root, 'turn').focus();
    await press('ArrowRight');
    expect(view.turn).to.equal(61);
    input(root, 'tilt').focus();
    await press('ArrowLeft');
    expect(view.tilt).to.equal(17);
    input(root, 'screen').focus();
    await press('ArrowLeft');
    await drawn(view);
    expect(view.screen).to.equal(-0.01);
    expect(input(root, 'screen').getAttribute('aria-valuetext')!.replaceAll('\u00a0', ' ')).to.match(/^0\.01 mm in front of the retina \(0\.03 D\)\. \d+ µm × \d+ µm, longer along 150°$/);
    expect(input(root, 'turn').getAttribute('aria-valuetext')).to.equal('61° from the front');
    expect([log.inputs.length, log.changes.length]).to.deep.equal([0, 0]);
    expect(log.views.filter(({ settled }) => settled).length).to.equal(3);
  });

  it('keeps its keys from a page that turns its slides by them', async () => {
    const { root } = await pencilFixture();
    const heard: string[] = [];
    const listener = (event: KeyboardEvent): void => void heard.push(event.key);
    document.addEventListener('keydown', listener);
    input(root, 'turn').focus();
    await press('ArrowRight');
    await press('PageDown');
    document.removeEventListener('keydown', listener);
    expect(heard).to.deep.equal([]);
  });

  it('lets no native event out', async () => {
    const { view, root } = await pencilFixture();
    const heard: string[] = [];
    for (const type of ['input', 'change']) view.addEventListener(type, () => heard.push(type));
    input(root, 'turn').focus();
    await press('ArrowRight');
    expect(heard).to.deep.equal([]);
  });

  it('puts the screen on a line, the circle or the retina by a button, and it follows the plan from then on', async () => {
    const { eye, view, root, log } = await pencilFixture();
    const buttons = [...root.querySelectorAll<HTMLButtonElement>('.stops button')];
    expect(buttons.map((button) => button.textContent.trim())).to.deep.equal(['Front line', 'Circle', 'Back line', 'Retina']);
    buttons[2]!.click();
    await drawn(view);
    expect(view.screen).to.equal('back-line');
    expect([log.views.length, log.views[0]!.settled]).to.deep.equal([1, true]);
    eye.steepMeridian = 20;
    await drawn(eye, view);
    expect(said(root)).to.match(/Patch: a line of \d+ µm along 20°/);
  });

  it('fires nothing when the page sets something', async () => {
    const { view, log } = await pencilFixture();
    Object.assign(view, { turn: 10, tilt: -10, screen: 'circle', pupil: 5, shows: 'before', inFocus: 'back-line' });
    await drawn(view);
    expect([log.views.length, log.inputs.length, log.changes.length]).to.deep.equal([0, 0, 0]);
  });

  it('shows the knob in focus while the keyboard is on the slider of the screen', async () => {
    const { view, root } = await pencilFixture();
    root.querySelector<HTMLElement>('figure')!.focus();
    await press('Tab');
    await drawn(view);
    expect(root.querySelector('[part="screen-handle"] .focus')).to.not.equal(null);
    input(root, 'turn').focus();
    await drawn(view);
    expect(root.querySelector('[part="screen-handle"] .focus')).to.equal(null);
  });
});
