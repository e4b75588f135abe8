/** The steps in each of their states: what axe finds, reflow, sizes of targets, and the way the keyboard goes. */
import { expect, fixture, html } from '@open-wc/testing';
import type { AstigCase } from '../../components/case/case.js';
import type { AstigSteps } from '../../components/steps/steps.js';
import { emulate, itInEveryScheme } from '../engine.js';
import { asBefore } from './steps-support.js';
import { drawn, press, until } from './support.js';

const STATES = ['first', 'middle', 'predicting', 'answered', 'last', 'refused'] as const;
type State = (typeof STATES)[number];

/** A lesson brought to a state. Invented. */
async function lessonAt(state: State, style = ''): Promise<{ eye: AstigCase; steps: AstigSteps }> {
  const root = await fixture<HTMLElement>(html`<div><astig-steps id="lesson"><astig-case flat-k="42.5" steep-k="44" steep-meridian="90">
    <astig-step>As measured.</astig-step>
    <astig-step incision-site="90" incision-flattening="0.5">The entry.</astig-step>
    <astig-step predict="The same at 180°: what will remain?" incision-site="180">It adds.</astig-step>
    <astig-step arc-site="90" arc-count="2" arc-length=${state === 'refused' ? 400 : 40}>Two arcs.</astig-step>
    <astig-cornea></astig-cornea><astig-vectors></astig-vectors>
  </astig-case></astig-steps></div>`);
  root.setAttribute('style', style);
  const [eye, steps] = [root.querySelector('astig-case')!, root.querySelector('astig-steps')!];
  const has = (selector: string): boolean => steps.shadowRoot!.querySelector(selector) !== null;
  await until(() => has('nav'), 'the bar');
  const moves = { first: 0, middle: 1, predicting: 2, answered: 3, last: 4, refused: 4 }[state];
  for (let move = 1; move <= moves; move += 1) {
    steps.next();
    await drawn(steps);
    if (move === 2) await until(() => has('.predict'), 'the question');
  }
  await until(() => !eye.model.moving, 'the end of the movement');
  await drawn(steps, ...eye.querySelectorAll('astig-step'), eye.querySelector('astig-cornea')!, eye.querySelector('astig-vectors')!);
  // It is the state that it is called by.
  expect([steps.step, has('.predict'), has('.refused'), steps.shadowRoot!.querySelector('.verdict')!.textContent !== ''].join()).to.equal(
    { first: '1,false,false,false', middle: '2,false,false,false', predicting: '3,true,false,false', answered: '3,false,false,true', last: '4,false,false,false', refused: '4,false,true,false' }[state],
  );
  return { eye, steps };
}

const seen = ({ shadowRoot }: Element): HTMLElement[] => [...shadowRoot!.querySelectorAll<HTMLElement>('*:not(svg *)')].filter((element) => element.checkVisibility() && !element.closest('.visually-hidden'));

describe('astig-steps: access', () => {
  afterEach(asBefore);

  for (const state of STATES) {
    itInEveryScheme(`has no fault that axe can find: ${state}`, async () => {
      const { steps } = await lessonAt(state);
      await expect(steps).to.be.accessible();
    });

    for (const [name, style] of [['320 px', 'inline-size: 320px'], ['360 px with text at 200 %', 'inline-size: 360px; font-size: 32px'], ['from right to left', 'inline-size: 320px; direction: rtl']] as const) {
      it(`is no wider than the page, and has targets of 24 px: ${state}, ${name}`, async () => {
        const { steps } = await lessonAt(state, style);
        const { left, right } = steps.getBoundingClientRect();
        const wide = seen(steps).filter((element) => element.getBoundingClientRect().right > right + 1 || element.getBoundingClientRect().left < left - 1);
        expect(wide.map(({ localName, className }) => `${localName}.${className}`)).to.deep.equal([]);
        const controls = seen(steps).filter((element) => element.matches('button, input'));
        expect(controls.length).to.equal(state === 'predicting' ? 5 : 2);
        for (const control of controls) expect(Math.min(control.getBoundingClientRect().width, control.getBoundingClientRect().height), control.className).to.be.at.least(24);
      });
    }
  }

  it('has no fault while it moves, nor where less motion is wanted, and is at its goal at once there', async () => {
    const { eye, steps } = await lessonAt('first');
    steps.next();
    await steps.updateComplete;
    expect(eye.model.moving).to.equal(true);
    await expect(steps).to.be.accessible();
    steps.previous();
    await until(() => !eye.model.moving, 'the end of the movement');
    await emulate({ 'prefers-reduced-motion': 'reduce' });
    steps.next();
    await steps.updateComplete;
    expect([eye.model.moving, eye.plan.incisionFlattening].join()).to.equal('false,0.5');
    await drawn(steps);
    await expect(steps).to.be.accessible();
  });

  it('is left by the keyboard at either side, with a question open too', async () => {
    const { steps } = await lessonAt('predicting');
    const [before, after] = ['before', 'after'].map((textContent) => Object.assign(document.createElement('button'), { textContent }));
    steps.before(before!);
    steps.after(after!);
    before!.focus();
    const own: string[] = [];
    for (let presses = 0; presses < 60 && document.activeElement !== after; presses += 1) {
      await press('Tab');
      const focused = steps.shadowRoot!.activeElement;
      if (focused) own.push(focused.classList[0]!);
    }
    expect(document.activeElement === after).to.equal(true);
    expect(own.join()).to.equal('magnitude,meridian,show,back,next');
    await press('Shift+Tab');
    expect(steps.shadowRoot!.activeElement!.classList[0]).to.equal('next');
  });

  it('is walked forward by the key that points forward in the direction of the page', async () => {
    const { steps } = await lessonAt('first', 'direction: rtl');
    steps.shadowRoot!.querySelector<HTMLElement>('.next')!.focus();
    await press('ArrowRight');
    expect(steps.step).to.equal(1);
    await press('ArrowLeft');
    expect(steps.step).to.equal(2);
  });
});
