/** Criteria of WCAG 2.2 that can be measured, for every element at once. The table in DEVELOPERS.md names each test. */
import { expect, fixture, html } from '@open-wc/testing';
import type { AstigCase } from '../../components/case/case.js';
import type { AstigOutcomes } from '../../components/outcomes/outcomes.js';
import { INVENTED_SLIPS, inventedResults } from '../../stories/results.js';
import { cdp } from '../cdp.js';
import { itWith } from '../engine.js';
import { settled } from './outcomes-support.js';
import { CEDAR, drawn, press } from './support.js';
import { speak } from './until.js';

const TAGS = ['astig-cornea', 'astig-vectors', 'astig-summary', 'astig-entry', 'astig-sweep', 'astig-options', 'astig-sight', 'astig-pencil', 'astig-explain', 'astig-outcomes', 'astig-cornea map="difference"'] as const;
type View = HTMLElement & { updateComplete: Promise<boolean> };

async function page(style = '', tags: readonly string[] = TAGS): Promise<{ eye: AstigCase; views: View[] }> {
  const root = await fixture<HTMLElement>(html`<div></div>`);
  root.setAttribute('style', style);
  root.innerHTML = `<astig-case>${tags.map((tag) => `<${tag}></${tag.split(' ', 1)[0]}>`).join('')}</astig-case>`;
  const eye = root.querySelector('astig-case')!;
  eye.plan = { ...CEDAR, lensCylinder: 1.5, lensMeridian: 20, arcDepth: 620 };
  const views = [...eye.children] as View[];
  const outcomes = eye.querySelector<AstigOutcomes>('astig-outcomes');
  if (outcomes) {
    outcomes.data = `${inventedResults(40)}\n${INVENTED_SLIPS}`;
    await settled(outcomes);
  }
  await drawn(eye, ...views);
  await new Promise((done) => setTimeout(done, 300));
  await drawn(...views);
  return { eye, views };
}

/** What can be seen of a view, without what is hidden by clipping and what is closed. */
const seen = (view: View, selector: string): HTMLElement[] => [...view.shadowRoot!.querySelectorAll<HTMLElement>(selector)].filter((element) => element.checkVisibility() && !element.closest('.visually-hidden') && getComputedStyle(element).clipPath === 'none');

describe('1.4.10 reflow and 1.4.4 resized text', () => {
  afterEach(() => document.documentElement.removeAttribute('lang'));

  for (const [name, style] of [['320 px, as at 400 %', 'inline-size: 320px'], ['360 px with text at 200 %', 'inline-size: 360px; font-size: 32px'], ['320 px in German', 'inline-size: 320px']] as const) {
    it(`nothing is wider than the page: ${name}`, async () => {
      const { views } = await page(style);
      if (name.endsWith('German')) await speak('de', document.documentElement, views[0]!);
      await drawn(...views);
      for (const view of views) {
        const { right, left } = view.getBoundingClientRect();
        // A table of figures may need two dimensions, which the criterion allows; it scrolls within its own frame.
        const wide = seen(view, ':not(svg *, .scroll *)').filter((element) => element.getBoundingClientRect().right > right + 1 || element.getBoundingClientRect().left < left - 1);
        expect(wide.map((element) => `${view.localName} ${element.localName}.${element.getAttribute('class')}`), name).to.deep.equal([]);
        expect(view.scrollWidth, view.localName).to.be.at.most(view.clientWidth + 1);
      }
    });
  }
});

describe('1.4.12 text spacing', () => {
  it('loses no text with the spacing of the criterion', async () => {
    const { views } = await page('inline-size: 420px; line-height: 1.5; letter-spacing: 0.12em; word-spacing: 0.16em; font-size: 16px');
    for (const view of views) {
      const clipped = seen(view, 'p, li, dd, dt, td, th, button, label, legend, summary, figcaption').filter((element) => {
        const { overflowX, overflowY } = getComputedStyle(element);
        return (overflowX !== 'visible' && element.scrollWidth > element.clientWidth + 1) || (overflowY !== 'visible' && element.scrollHeight > element.clientHeight + 1);
      });
      expect(clipped.map((element) => `${view.localName}: ${element.textContent}`)).to.deep.equal([]);
      expect(view.scrollWidth, view.localName).to.be.at.most(view.clientWidth + 1);
    }
  });
});

describe('2.5.8 target size', () => {
  // A link or button within a sentence is an exception of the criterion; so is what has another control of 24 px for the same.
  const inSentence = (element: HTMLElement): boolean => element.matches('.sourced') && !element.closest('.large');

  for (const [name, style] of [['as it is', ''], ['at 320 px', 'inline-size: 320px'], ['text at 200 %', 'font-size: 32px'], ['zoomed 1.5 times', 'zoom: 1.5; inline-size: 360px']] as const) {
    it(`every control is 24 px at least: ${name}`, async () => {
      const { views } = await page(style);
      for (const view of views) {
        const small = seen(view, 'button, a[href], summary, select, input:not(.visually-hidden):not([type=range])').filter((element) => {
          const target = element.closest('label') ?? element;
          const { width, height } = target.getBoundingClientRect();
          return !inSentence(element) && Math.min(width, height) < 24 - 0.01;
        });
        expect(small.map((element) => `${view.localName} ${element.localName}.${element.className} ${element.getBoundingClientRect().height}`)).to.deep.equal([]);
      }
    });
  }
});

describe('1.4.11 contrast of what is drawn', () => {
  /** Lines without which the picture cannot be read, and the ground on which each lies. */
  const LINES: [tag: string, selector: string, ground: string][] = [
    ['astig-cornea', '[part=incision] .entry', '[part=limbus]'],
    ['astig-cornea', '[part=incision] .entry', '.sclera'],
    ['astig-cornea', '[part=arc]', '[part=limbus]'],
    ['astig-cornea', '[part=steep-before]', '[part=limbus]'],
    ['astig-cornea', '[part=steep-after]', '[part=limbus]'],
    ['astig-cornea', '[part=lens-axis]', '[part=limbus]'],
    ['astig-cornea', '[part=limbus]', '.sclera'],
    ['astig-pencil', '[part=front-line] .focal', ''],
    ['astig-pencil', '[part=back-line] .focal', ''],
    ['astig-pencil', '[part=circle]', ''],
    ['astig-pencil', '[part=retina]', ''],
    ['astig-pencil', '[part=screen]', ''],
    ...['before', 'after', 'induced'].flatMap((name): [string, string, string][] => [['astig-outcomes', `.${name} [part=mean-ellipse]`, ''], ['astig-outcomes', `.${name} [part=eyes-ellipse]`, '']]),
    ['astig-vectors', '[data-source=before] .shaft', ''],
    ['astig-vectors', '[data-source=incision] .shaft', ''],
    ['astig-vectors', '[data-source=arcs] .shaft', ''],
    ['astig-vectors', '[data-source=lens] .shaft', ''],
    ['astig-vectors', '[data-source=residual] .shaft', ''],
  ];

  for (const scheme of ['light', 'dark']) {
    it(`is 3:1 at least: ${scheme}`, async () => {
      const { views } = await page(`color-scheme: ${scheme}`);
      const paper = getComputedStyle(views[0]!.shadowRoot!.querySelector('.probe')!).backgroundColor;
      for (const [tag, selector, ground] of LINES) {
        const { shadowRoot } = views.find(({ localName }) => localName === tag)!;
        const line = getComputedStyle(shadowRoot!.querySelector(selector)!).stroke;
        const behind = ground === '' ? paper : getComputedStyle(shadowRoot!.querySelector(ground)!).fill;
        expect(contrast(line, behind), `${scheme}: ${selector} on ${ground}: ${line} on ${behind}`).to.be.at.least(3);
      }
    });
  }
});

describe('1.4.11 contrast of the map of the power', () => {
  for (const scheme of ['light', 'dark']) {
    for (const state of ['before', 'difference']) {
      it(`is 3:1 at least for what tells the powers apart without colour: ${state}, ${scheme}`, async () => {
        const { views } = await page(`color-scheme: ${scheme}`, [`astig-cornea map="${state}"`]);
        const root = views[0]!.shadowRoot!;
        const scale = root.querySelector('.map-scale')!;
        const paper = getComputedStyle(scale.querySelector('.map-ground')!).fill;
        const share = Number(getComputedStyle(scale.querySelector('.map-colours')!).opacity);
        const grounds = [...scale.querySelectorAll('.map-colours rect')].map((rect) => mixed(getComputedStyle(rect).fill, paper, share));
        expect(grounds.length).to.be.greaterThan(3);
        for (const selector of state === 'difference' ? ['.map-line.less', '[part=map] .map-sign'] : ['.map-line.printed']) {
          const { stroke, opacity } = getComputedStyle(root.querySelector(selector)!);
          for (const ground of grounds) expect(contrast(mixed(stroke, ground, Number(opacity)), ground), `${selector} on ${ground}`).to.be.at.least(3);
        }
      });
    }
  }
});

/** A colour of which only a share lies on a ground. */
function mixed(colour: string, ground: string, share: number): string {
  const [front, back] = [colour, ground].map((text) => text.match(/[\d.]+/g)!.slice(0, 3).map(Number)) as [number[], number[]];
  return `rgb(${front.map((part, index) => share * part + (1 - share) * back[index]!).join(', ')})`;
}

/** Contrast of two colours as WCAG defines it. */
function contrast(a: string, b: string): number {
  const [light, dark] = [luminance(a), luminance(b)].sort((x, y) => y - x) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

function luminance(colour: string): number {
  const parts = colour.match(/[\d.]+/g)!.slice(0, 3).map(Number);
  const [r, g, b] = parts.map((part) => (part / 255 <= 0.04045 ? part / 255 / 12.92 : ((part / 255 + 0.055) / 1.055) ** 2.4)) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

describe('2.1.1 keyboard and 2.4.3 order of focus', () => {
  it('walks through cornea, vectors and summary in the order of reading, and out again', async () => {
    const { eye } = await page('', ['astig-cornea', 'astig-vectors', 'astig-summary']);
    const before = Object.assign(document.createElement('button'), { textContent: 'before' });
    const after = Object.assign(document.createElement('button'), { textContent: 'after' });
    eye.before(before);
    eye.after(after);
    before.focus();
    const walk: string[] = [];
    for (let step = 0; step < 40; step += 1) {
      await press('Tab');
      const focused = deepest();
      if (focused === after) break;
      walk.push(focused.getAttribute('aria-label') ?? focused.textContent!.trim());
    }
    expect(walk.slice(0, 4)).to.deep.equal(['Site of the incision', 'Site of the relaxing arc', 'Length of the relaxing arc', 'Meridian of the toric lens']);
    expect(walk.slice(4, 11).map((name) => name.split(/[ :,]/)[0])).to.deep.equal(['Source', 'Before', 'The', 'The', 'The', 'Remaining', 'Source']);
    expect(walk.length).to.be.greaterThan(14);
    for (const name of walk) expect(name).to.not.equal('');
    expect(deepest().textContent, 'no trap').to.equal('after');
    before.remove();
    after.remove();
  });
});

describe('2.1.1 keyboard: the map of the power', () => {
  it('gives the power at a point to who has no pointer', async () => {
    const { eye, views } = await page('', ['astig-cornea map="after"']);
    eye.readOnly = true;
    await drawn(...views);
    const reading = (): string => views[0]!.shadowRoot!.querySelector('.map output')!.textContent.trim();
    const walk: string[] = [];
    const before = Object.assign(document.createElement('button'), { textContent: 'before' });
    eye.before(before);
    before.focus();
    for (let step = 0; step < 2; step += 1) {
      await press('Tab');
      const slider = deepest() as HTMLInputElement;
      walk.push(slider.labels![0]!.textContent.trim());
      await press('ArrowRight');
      await drawn(...views);
      expect(slider.getAttribute('aria-valuetext')).to.equal(reading());
    }
    expect(walk).to.deep.equal(['Direction', 'Distance from the centre']);
    expect(reading()).to.match(/^\d\d\.\d\d\sD at 1°, 0\.1\smm from the centre$/);
    before.remove();
  });
});

function deepest(): Element {
  let element = document.activeElement!;
  while (element.shadowRoot?.activeElement) element = element.shadowRoot.activeElement;
  return element;
}

describe('4.1.2 name, role, value', () => {
  interface Node {
    ignored: boolean;
    role?: { value: string };
    name?: { value: string };
    value?: { value: unknown };
  }

  itWith('tree', 'has the sliders, the figures and the live region in the tree of the browser', async () => {
    const { views } = await page('', ['astig-cornea', 'astig-summary']);
    const { nodes } = (await cdp('Accessibility.getFullAXTree')) as unknown as { nodes: Node[] };
    const known = nodes.filter(({ ignored }) => !ignored);
    const sliders = known.filter(({ role }) => role?.value === 'slider');
    expect(sliders.map(({ name }) => name!.value)).to.deep.equal(['Site of the incision', 'Site of the relaxing arc', 'Length of the relaxing arc', 'Meridian of the toric lens']);
    expect(sliders.map(({ value }) => value!.value)).to.deep.equal([180, 0, 30, 20]);
    // The tree of the protocol has the number only; the words stand in the attribute.
    const spoken = [...views[0]!.shadowRoot!.querySelectorAll('input[type=range]')].map((input) => input.getAttribute('aria-valuetext')!);
    expect(spoken[0]).to.match(/180 degrees, temporal, 9 o'clock/);
    for (const text of spoken) expect(text).to.match(/degrees/);
    const image = known.find(({ role, name }) => role?.value === 'image' && /Right eye/.test(name?.value ?? ''));
    expect(image!.name!.value).to.match(/steep along 180 degrees by 1\.00 dioptres.*Expected to remain/s);
    expect(known.filter(({ role }) => role?.value === 'button').every(({ name }) => (name?.value ?? '') !== '')).to.equal(true);
    expect(known.some(({ role }) => role?.value === 'status')).to.equal(true);
  });
});
