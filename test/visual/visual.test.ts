/** A few pictures of the drawings beside the ones that were looked at and kept: see `run.mjs`. */
import { expect, fixture, html } from '@open-wc/testing';
import { executeServerCommand } from '@web/test-runner-commands';
import type { AstigCase } from '../../components/case/case.js';
import { CEDAR, drawn } from '../components/support.js';
import { emulate, screenshot } from '../engine.js';

/** Pixels that may differ: edges are smoothed a little differently from run to run, a label that has moved is hundreds. */
const MOST = 40;

interface Compared {
  /** -1 where there is no kept picture. */
  different: number;
}

const VIEWS = ['cornea', 'vectors', 'sweep', 'summary'] as const;

async function shown(tag: string, lang = 'en'): Promise<AstigCase> {
  const view = document.createElement(`astig-${tag}`);
  const eye = await fixture<AstigCase>(html`<astig-case .plan=${{ ...CEDAR, lensCylinder: 1, lensMeridian: 10 }} lang=${lang}><div style="width: 420px; background: Canvas">${view}</div></astig-case>`);
  await document.fonts.ready;
  await drawn(eye, view as unknown as { updateComplete: Promise<boolean> });
  window.scrollTo(0, 0);
  await new Promise((done) => setTimeout(done, 300));
  return eye;
}

async function compared(name: string, keep = true): Promise<number> {
  return (await executeServerCommand<Compared, object>('compare-picture', { name, data: await screenshot(), keep })).different;
}

describe('looks as it did', () => {
  before(() => emulate({ 'prefers-reduced-motion': 'reduce' }));
  after(() => emulate({}));

  for (const tag of VIEWS) {
    it(tag, async () => {
      await shown(tag);
      expect(await compared(tag), 'pixels that differ; npm run test:visual -- --update keeps the new picture').to.be.within(0, MOST);
    });
  }

  it('and sees a label that has moved by three pixels', async () => {
    const eye = await shown('cornea');
    const label = eye.querySelector('astig-cornea')!.shadowRoot!.querySelector('svg .title')!;
    label.setAttribute('transform', 'translate(3 0)');
    await new Promise(requestAnimationFrame);
    expect(await compared('cornea', false)).to.be.above(MOST);
  });
});
