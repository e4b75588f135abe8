/** What could hurt somebody, across the elements; the list of hazards is in DEVELOPERS.md. */
import { expect, fixture, html } from '@open-wc/testing';
import type { AstigCase } from '../../components/case/case.js';
import { CEDAR, drawn } from './support.js';

const VIEWS = ['astig-cornea', 'astig-vectors', 'astig-summary', 'astig-sweep', 'astig-options', 'astig-explain'] as const;

async function whole(plan: object = {}): Promise<AstigCase> {
  const eye = await fixture<AstigCase>(html`<astig-case .plan=${{ ...CEDAR, ...plan }}>
    <astig-cornea></astig-cornea><astig-vectors></astig-vectors><astig-summary></astig-summary>
    <astig-sweep></astig-sweep><astig-options></astig-options><astig-explain></astig-explain>
  </astig-case>`);
  await settled(eye);
  return eye;
}

const settled = (eye: AstigCase): Promise<void> => drawn(eye, ...VIEWS.map((tag) => eye.querySelector(tag) as unknown as { updateComplete: Promise<boolean> }));

/** All that can be read or heard of a view. */
function wordsOf(eye: AstigCase, tag: string): string {
  const root = eye.querySelector(tag)!.shadowRoot!;
  return `${root.textContent} ${[...root.querySelectorAll('[aria-label]')].map((one) => one.getAttribute('aria-label')).join(' ')}`.replaceAll(/\s+/g, ' ');
}

describe('the wrong eye', () => {
  for (const [eye, other] of [['right', 'left'], ['left', 'right']] as const) {
    it(`is not to be taken for the ${eye} one: each view of the plan names the eye, and no other`, async () => {
      const shown = await whole({ eye });
      for (const tag of ['astig-cornea', 'astig-vectors', 'astig-summary', 'astig-sweep', 'astig-explain']) {
        expect(wordsOf(shown, tag).toLowerCase(), tag).to.contain(`${eye} eye`).and.not.contain(`${other} eye`);
      }
    });
  }

  it('is named anew at once everywhere when the eye is changed, and no site or meridian moves', async () => {
    const eye = await whole();
    const { eye: _before, ...before } = eye.plan;
    eye.eye = 'left';
    const { eye: now, ...after } = eye.plan;
    expect(now).to.equal('left');
    expect(JSON.stringify(after)).to.equal(JSON.stringify(before));
    await settled(eye);
    for (const tag of ['astig-cornea', 'astig-vectors', 'astig-summary', 'astig-sweep', 'astig-explain']) {
      expect(wordsOf(eye, tag).toLowerCase(), tag).to.contain('left eye').and.not.contain('right eye');
    }
  });
});

describe('a stale figure', () => {
  it('is on no view a frame after the page has set another plan', async () => {
    const eye = await whole();
    const old = eye.outcome.after.magnitude.toFixed(2);
    eye.plan = { ...CEDAR, steepK: 46.35, steepMeridian: 77 };
    const fresh = eye.outcome.after.magnitude.toFixed(2);
    expect(fresh).to.not.equal(old);
    await settled(eye);
    for (const tag of ['astig-cornea', 'astig-vectors', 'astig-summary']) expect(wordsOf(eye, tag), tag).to.contain(fresh);
  });

  it('cannot be worked on while a setting is refused: the refusal is read, and no slider moves the plan', async () => {
    const eye = await whole();
    eye.setAttribute('steep-meridian', '190');
    await settled(eye);
    expect(wordsOf(eye, 'astig-summary')).to.contain('190').and.contain('180');
    const before = JSON.stringify(eye.plan);
    for (const view of eye.querySelectorAll('astig-cornea, astig-sweep')) {
      for (const slider of view.shadowRoot!.querySelectorAll<HTMLInputElement>('input[type=range]')) {
        slider.value = String((Number(slider.min) + Number(slider.max)) / 2);
        slider.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
      }
    }
    expect(JSON.stringify(eye.plan)).to.equal(before);
  });
});

describe('too much trust', () => {
  it('is not asked for: summary, plans and the patient’s page say that the figures are estimates', async () => {
    const eye = await whole();
    for (const tag of ['astig-summary', 'astig-options', 'astig-explain']) expect(wordsOf(eye, tag).toLowerCase(), tag).to.match(/estimate|not a promise|cannot be known/);
  });
});
