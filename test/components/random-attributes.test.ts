/** Whatever a page writes into an attribute, the elements in a real browser go on drawing and never show what is no figure. */
import { expect, fixture, html } from '@open-wc/testing';
import fc from 'fast-check';
import type { AstigCase } from '../../components/case/case.js';
import { evaluatePlan } from '../../core/index.js';
import { NASTY, attributeText } from '../core/nasty.js';
import { FAULT, TAGS } from '../monkey/page.js';
import { CEDAR, drawn } from './support.js';

type View = HTMLElement & { updateComplete: Promise<boolean> };

const RUNS = 150;

/** All attributes that an element listens to, and those that it minds on itself or on what is around it. */
const attributesOf = (tag: string): string[] => [...(customElements.get(tag) as unknown as { observedAttributes: string[] }).observedAttributes, 'lang', 'dir', 'class', 'hidden'];

/** Errors that nobody caught, since `listen`. */
class Uncaught {
  readonly found: string[] = [];
  readonly #note = (event: ErrorEvent | PromiseRejectionEvent): void => {
    const text = String(event instanceof ErrorEvent ? event.message : event.reason);
    // The browser's remark that a size changed while sizes were told is no exception.
    if (!text.includes('ResizeObserver loop')) this.found.push(text);
  };

  listen(): void {
    this.found.length = 0;
    addEventListener('error', this.#note);
    addEventListener('unhandledrejection', this.#note);
  }

  stop(): void {
    removeEventListener('error', this.#note);
    removeEventListener('unhandledrejection', this.#note);
  }
}

describe('random attributes in the browser', () => {
  const uncaught = new Uncaught();
  beforeEach(() => uncaught.listen());
  afterEach(() => uncaught.stop());

  for (const tag of ['astig-case', ...TAGS]) {
    it(`${tag}: taken or refused, never an exception nor a figure that is none`, async function tried() {
      this.timeout(120_000);
      const root = await fixture<HTMLElement>(html`<div></div>`);
      root.innerHTML = `<astig-case id="case">${tag === 'astig-case' ? '<astig-summary></astig-summary>' : `<${tag}></${tag}>`}</astig-case>`;
      const eye = root.querySelector<AstigCase>('astig-case')!;
      const view = eye.firstElementChild as View;
      const target = tag === 'astig-case' ? eye : view;
      eye.plan = { ...CEDAR, lensCylinder: 1.5, lensMeridian: 20 };
      await drawn(eye, view);

      const attempt = async (name: string, text: string): Promise<void> => {
        target.setAttribute(name, text);
        await drawn(eye, view);
        const told = `${tag} ${name}=${JSON.stringify(text.slice(0, 60))}`;
        expect(uncaught.found, told).to.deep.equal([]);
        expect(JSON.stringify(eye.outcome), told).to.equal(JSON.stringify(evaluatePlan(eye.plan)));
        // A refusal quotes what was written, and what is too large for a number is an infinite one.
        if (!FAULT.test(text) && Math.abs(Number(text)) !== Infinity) expect(FAULT.exec(view.shadowRoot!.innerHTML)?.[0] ?? 'no fault', told).to.equal('no fault');
        expect(view.shadowRoot!.textContent!.trim(), told).not.to.equal('');
        target.removeAttribute(name);
      };

      const names = attributesOf(tag);
      for (const [index, text] of NASTY.entries()) await attempt(names[index % names.length]!, text);
      await fc.assert(fc.asyncProperty(fc.constantFrom(...names), attributeText, attempt), { numRuns: RUNS, seed: 20240229 });
      await drawn(eye, view);
      expect(uncaught.found).to.deep.equal([]);
    });
  }
});
