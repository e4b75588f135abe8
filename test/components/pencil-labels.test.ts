import { expect, fixture, html } from '@open-wc/testing';
import fc from 'fast-check';
import '../../components/pencil/define.js';
import type { AstigCase } from '../../components/case/case.js';
import { anyPlan, faults } from './label-faults.js';
import { drawn } from './support.js';
import { speak } from './until.js';

const PLANS = 250;

/** What is drawn, and from where. */
const anyView = fc.record({
  turn: fc.integer({ min: -180, max: 180 }),
  tilt: fc.integer({ min: -45, max: 45 }),
  screen: fc.constantFrom('front-line', 'circle', 'back-line', 'retina', -0.3, 0.2),
  inFocus: fc.constantFrom('least-blur', 'front-line', 'back-line'),
  pupil: fc.constantFrom(1, 3, 6),
});

describe('labels of astig-pencil', () => {
  for (const [width, font, lang] of [[300, 16, 'en'], [328, 32, 'en'], [420, 16, 'en'], [544, 16, 'en'], [328, 32, 'de'], [328, 16, 'ar'], [420, 16, 'zh']] as const) {
    it(`at ${width} px with text of ${font} px in ${lang} never overlap or clip, over ${PLANS} random plans and views`, async () => {
      const eye = await fixture<AstigCase>(html`<astig-case lang="en"></astig-case>`);
      const view = document.createElement('astig-pencil');
      const box = document.createElement('div');
      box.setAttribute('style', `inline-size: ${width}px; font-size: ${font}px`);
      box.append(view);
      eye.append(box);
      await drawn(view);
      if (lang !== 'en') await speak(lang, eye, view);
      await drawn(view);
      const drawing = view.shadowRoot!.querySelector('svg')!;
      expect(drawing.clientWidth).to.equal(width);
      const bad: string[] = [];
      let seen = 0;
      let lines = 0;
      for (const [plan, how] of fc.sample(fc.tuple(anyPlan, anyView), { numRuns: PLANS, seed: 20_261 })) {
        eye.plan = plan;
        Object.assign(view, how);
        await eye.updateComplete;
        await view.updateComplete;
        seen += drawing.querySelectorAll('text').length;
        lines += drawing.querySelectorAll('text.name').length;
        bad.push(...faults(drawing).map((fault) => `${fault}: ${JSON.stringify([plan, how])}`));
      }
      expect(bad.slice(0, 5)).to.deep.equal([]);
      expect(seen).to.be.above(PLANS * 8);
      // A view along the light has little room; elsewhere nearly all names stand in the picture.
      expect(lines).to.be.above(PLANS * 3);
    }).timeout(60_000);
  }
});
