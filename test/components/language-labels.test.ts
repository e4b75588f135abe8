import { expect, fixture, html } from '@open-wc/testing';
import fc from 'fast-check';
import type { AstigCase } from '../../components/case/case.js';
import { anyPlan, faults } from './label-faults.js';
import { drawn, until } from './support.js';

const PLANS = 60;

/** A phone and a wide page, CSS px. */
const WIDTHS = [300, 544];

const NAMES = { de: 'Auge', es: 'Ojo', fr: 'Œil', ar: 'العين', zh: '眼' };

describe('labels in other languages', () => {
  for (const [lang, word] of Object.entries(NAMES)) {
    for (const width of WIDTHS) {
      for (const text of [100, 200]) {
        it(`never overlap or clip in ${lang} at ${width} px with text at ${text} %, over ${PLANS} random plans`, async () => {
          const eye = await fixture<AstigCase>(html`<astig-case></astig-case>`);
          const box = document.createElement('div');
          box.lang = lang;
          box.setAttribute('style', `inline-size: ${width}px; font-size: ${text}%; font-family: sans-serif`);
          const views = (['astig-cornea', 'astig-vectors'] as const).map((tag) => document.createElement(tag));
          box.append(...views);
          eye.append(box);
          const title = (): string => views[0]!.shadowRoot?.querySelector('.title')?.textContent ?? '';
          await until(() => title().includes(word), word);
          await drawn(...views);
          const bad: string[] = [];
          for (const plan of fc.sample(anyPlan, { numRuns: PLANS, seed: 20_252 })) {
            eye.plan = plan;
            for (const element of [eye, ...views]) await element.updateComplete;
            bad.push(...views.flatMap((view) => faults(view.shadowRoot!.querySelector('svg')!)).map((fault) => `${fault}: ${JSON.stringify(plan)}`));
          }
          expect(bad.slice(0, 5)).to.deep.equal([]);
        });
      }
    }
  }
});
