/** The lessons as they are shipped: read from `stories/lessons`, walked through by keyboard, every figure calculated again. */
import { expect, fixture, html } from '@open-wc/testing';
import type { AstigCase } from '../../components/case/case.js';
import type { AstigSteps } from '../../components/steps/steps.js';
import { cdp } from '../cdp.js';
import { emulate, itWith } from '../engine.js';
import { GROUPS, LESSONS, arrowsOf, figuresIn, means } from './lessons.js';
import type { Shown } from './lessons.js';
import { asBefore } from './steps-support.js';
import { drawn, press, until } from './support.js';

interface Lesson {
  steps: AstigSteps;
  eye: AstigCase;
  count: number;
  views: (HTMLElement & { updateComplete: Promise<boolean> })[];
  at: (selector: string) => HTMLElement;
}

const plain = (text: string): string => text.replaceAll(/[\s\u00a0\u2066-\u2069]+/g, ' ').trim();
const status = ({ at }: Lesson): string => plain(at('nav [role=status]').textContent);

async function open(name: string): Promise<Lesson> {
  const root = await fixture<HTMLElement>(html`<div></div>`);
  root.innerHTML = `<button>Before</button>${await (await fetch(`/stories/lessons/${name}.html`)).text()}<button>After</button>`;
  const [steps, eye] = [root.querySelector('astig-steps')!, root.querySelector('astig-case')!];
  const views = [...root.querySelectorAll<Lesson['views'][number]>('astig-cornea, astig-vectors')];
  const at = (selector: string): HTMLElement => steps.shadowRoot!.querySelector<HTMLElement>(selector)!;
  await until(() => at('nav'), 'the bar');
  const lesson = { steps, eye, views, at, count: root.querySelectorAll('astig-step').length };
  await settled(lesson);
  return lesson;
}

async function settled({ steps, eye, views }: Lesson): Promise<void> {
  await drawn(steps, ...views);
  await until(() => !eye.model.moving, 'the end of the movement');
  await drawn(steps, ...views);
}

/** The texts of the steps that are shown, as sighted readers have them. */
function visible({ steps }: Lesson): string {
  return [...steps.querySelectorAll('astig-step')].filter((step) => step.shadowRoot!.querySelector('div')!.checkVisibility()).map((step) => plain(step.textContent)).join(' | ');
}

function deepest(): HTMLElement {
  let element = document.activeElement!;
  while (element.shadowRoot?.activeElement) element = element.shadowRoot.activeElement;
  return element as HTMLElement;
}

/** What live regions of the steps say from now on; emptying one says nothing. */
function listenTo({ steps }: Lesson): string[] {
  const said: string[] = [];
  const last = new Map<Element, string>();
  const regions = (): Element[] => [...steps.shadowRoot!.querySelectorAll('[role=status]')];
  for (const region of regions()) last.set(region, plain(region.textContent));
  new MutationObserver(() => {
    for (const region of regions()) {
      const text = plain(region.textContent);
      if (text !== '' && text !== last.get(region)) said.push(text);
      last.set(region, text);
    }
  }).observe(steps.shadowRoot!, { subtree: true, childList: true, characterData: true });
  return said;
}

interface Node {
  nodeId: string;
  ignored: boolean;
  role?: { value: string };
  name?: { value: string };
  childIds?: string[];
  properties?: { name: string; value: { value: unknown } }[];
}

/** What the browser hands to a screen reader. */
async function tree(): Promise<{ buttons: string; focus: string; spoken: string; texts: string }> {
  const { nodes } = (await cdp('Accessibility.getFullAXTree')) as unknown as { nodes: Node[] };
  const known = nodes.filter(({ ignored }) => !ignored);
  const byId = new Map(nodes.map((node) => [node.nodeId, node]));
  const below = (node: Node): string => (node.role?.value === 'StaticText' ? node.name!.value : (node.childIds ?? []).map((id) => below(byId.get(id)!)).join(' '));
  const has = (node: Node, name: string): boolean => node.properties?.find((property) => property.name === name)?.value.value === true;
  const regions = known.filter(({ role }) => role?.value === 'status').map((node) => plain(below(node)));
  return {
    buttons: known.filter(({ role, name }) => role?.value === 'button' && ['Back', 'Next'].includes(name!.value)).map((node) => `${node.name!.value}${has(node, 'disabled') ? ' (disabled)' : ''}`).join(', '),
    focus: known.filter((node) => has(node, 'focused') && node.role!.value !== 'RootWebArea').map(({ name, role }) => `${role!.value} ${name?.value}`).join(),
    spoken: regions.filter(Boolean).join(' / '),
    texts: known.filter(({ role }) => role?.value === 'StaticText').map(({ name }) => plain(name!.value)).join('\n'),
  };
}

/** Goes on by the key that presses the button with the focus; the answer to a question is what is there. */
async function goOn(lesson: Lesson): Promise<'step' | 'question'> {
  await press('Enter');
  await settled(lesson);
  if (!lesson.steps.querySelectorAll('astig-step')[lesson.steps.step - 1]!.hasAttribute('predict')) return 'step';
  await until(() => lesson.at('.predict') ?? lesson.at('.verdict')?.textContent, 'the question or its answer');
  await settled(lesson);
  return lesson.at('.predict') ? 'question' : 'step';
}

async function toNext({ at, steps }: Lesson): Promise<void> {
  (steps.previousElementSibling?.matches('button') ? (steps.previousElementSibling as HTMLElement) : steps.parentElement!.querySelector('button')!).focus();
  for (let presses = 0; presses < 60 && deepest() !== at('.next'); presses += 1) await press('Tab');
}

/** Walks to the last step; `seen` hears of each step and each question. */
async function walk(lesson: Lesson, seen: (what: 'step' | 'question') => Promise<void> | void): Promise<void> {
  await toNext(lesson);
  await seen('step');
  for (let moves = 0; lesson.steps.step < lesson.count || lesson.at('.predict'); moves += 1) {
    if (moves > 20) throw new Error(`stuck at step ${lesson.steps.step}`);
    await seen(await goOn(lesson));
  }
}

describe('lessons', () => {
  beforeEach(() => emulate({ 'prefers-reduced-motion': 'reduce' }));
  afterEach(asBefore);

  for (const [name, figures] of Object.entries(LESSONS)) {
    describe(name, () => {
      it('names no figure that the core does not give, and draws the same', async () => {
        const lesson = await open(name);
        const [shown, texts, questions]: [Shown[], string[], string[]] = [[], [], []];
        await walk(lesson, (what) => {
          const told = status(lesson).replace(/^Step \d of \d /, '');
          if (what === 'question') return void (questions[shown.length] = told);
          texts.push(told);
          const { plan, outcome } = lesson.eye;
          shown.push({ plan, outcome });
          const { magnitude, meridian } = outcome.after;
          for (const { localName, shadowRoot } of lesson.views) {
            if (magnitude < 0.005 && localName === 'astig-vectors') continue;
            const remaining = `${localName === 'astig-cornea' ? 'Remaining, as expected,' : 'remaining'} ${magnitude.toFixed(2)} D${magnitude < 0.005 ? '' : ` @ ${Math.round(meridian)}°`}`;
            expect(plain(shadowRoot!.textContent), `step ${shown.length}, ${localName}`).to.contain(remaining);
          }
        });
        const steps = [...lesson.steps.querySelectorAll('astig-step')];
        for (const [index, { text, question = [], labels = [] }] of figures(shown).entries()) {
          expect(figuresIn(texts[index]!), `step ${index + 1}: ${texts[index]}`).to.deep.equal(text);
          expect(figuresIn(questions[index] ?? ''), `question before step ${index + 1}`).to.deep.equal(question);
          expect([...steps[index]!.querySelectorAll('text')].flatMap((label) => figuresIn(label.textContent)), `labels of step ${index + 1}`).to.deep.equal(labels);
        }
        expect(texts.length).to.equal(lesson.count);
      });

      it('is walked there and back by keyboard alone: each step is said once, and the focus stays', async () => {
        const lesson = await open(name);
        const said = listenTo(lesson);
        const plans: string[] = [];
        let heard = 0;
        await walk(lesson, (what) => {
          expect(lesson.steps.shadowRoot!.activeElement, 'focus in the bar').to.not.equal(null);
          const spoken = said.slice(heard);
          heard = said.length;
          const step = `Step ${lesson.steps.step} of ${lesson.count}`;
          const verdicts = spoken.filter((text) => text.startsWith('You expected'));
          expect(spoken.length - verdicts.length, spoken.join(' / ')).to.equal(step.startsWith('Step 1 ') ? 0 : 1);
          expect(status(lesson).startsWith(step)).to.equal(true);
          if (what === 'question') {
            expect(verdicts.length).to.equal(0);
            return;
          }
          plans.push(JSON.stringify(lesson.eye.plan));
          const { magnitude } = lesson.eye.outcome.after;
          const asked = lesson.steps.querySelectorAll('astig-step')[lesson.steps.step - 1]!.hasAttribute('predict');
          expect(verdicts.length).to.equal(asked ? 1 : 0);
          if (asked) expect(verdicts[0]).to.match(/^You expected \d\.\d\d D( @ \d+°)?; /).and.contain(`the estimate is ${magnitude.toFixed(2)} D @ ${Math.round(lesson.eye.outcome.after.meridian)}°. The difference is`);
        });
        if (deepest() === lesson.at('.next')) await press('Shift+Tab');
        for (let step = lesson.count; step > 1; step -= 1) {
          expect(JSON.stringify(lesson.eye.plan)).to.equal(plans[step - 1]);
          await press('Enter');
          await settled(lesson);
          expect(said.slice(heard).map((text) => text.split(' ').slice(0, 4).join(' ')).join()).to.equal(`Step ${step - 1} of ${lesson.count}`);
          heard = said.length;
          expect(deepest() === lesson.at('.back')).to.equal(true);
        }
        expect(JSON.stringify(lesson.eye.plan)).to.equal(plans[0]);
        await press('Enter');
        expect([lesson.steps.step, said.length, lesson.at('.back').getAttribute('aria-disabled')]).to.deep.equal([1, heard, 'true']);
      });

      itWith('tree', 'gives a screen reader at each step its text, the place in the lesson, the buttons and the answer', async () => {
        const lesson = await open(name);
        await walk(lesson, async (what) => {
          const { buttons, focus, spoken, texts } = await tree();
          const { step } = lesson.steps;
          const last = step === lesson.count && what === 'step';
          expect(buttons).to.equal(`Back${step === 1 ? ' (disabled)' : ''}, Next${last ? ' (disabled)' : ''}`);
          const asked = lesson.steps.querySelectorAll('astig-step')[step - 1]!.getAttribute('predict');
          const back = last && asked !== null;
          expect(focus).to.equal(`button ${back ? 'Back' : 'Next'}`);
          expect(spoken).to.contain(`Step ${step} of ${lesson.count}`);
          if (what === 'question') expect(spoken).to.contain(asked!).and.not.contain('You expected');
          else if (asked !== null) expect(spoken).to.match(/You expected \d\.\d\d D( @ \d+°)?; the estimate is \d\.\d\d D/);
          const reached = what === 'question' ? step - 1 : step;
          for (const [index, one] of [...lesson.steps.querySelectorAll('astig-step')].entries()) {
            const sentence = plain((one.querySelector('p') ?? one).textContent);
            expect(texts.includes(sentence), `step ${index + 1} in the tree at ${reached}`).to.equal(index + 1 === reached);
          }
        });
      });

      it('has an address for each step', async () => {
        const { steps, count } = await open(name);
        const { id } = steps;
        steps.remove();
        for (let step = 1; step <= count; step += 1) {
          history.replaceState(null, '', `#${id}-${step}`);
          const lesson = await open(name);
          await until(() => status(lesson).startsWith(`Step ${step} `), `step ${step}`);
          await settled(lesson);
          expect([lesson.at('.predict') === null, visible(lesson)]).to.deep.equal([true, plain(lesson.steps.querySelectorAll('astig-step')[step - 1]!.textContent)]);
          lesson.steps.parentElement!.remove();
        }
      });
    });
  }

  it('draws the arrows of a group as its eyes are', async () => {
    const { steps } = await open('mean-of-magnitudes');
    const drawings = [...steps.querySelectorAll('astig-step svg')];
    for (const [index, group] of GROUPS.entries()) {
      const arrows = arrowsOf(drawings[index]!.querySelector('path')!.getAttribute('d')!);
      expect(arrows.map(({ meridian }) => Math.round(meridian)).join()).to.equal(group.join());
      for (const { magnitude } of arrows) expect(magnitude).to.be.closeTo(1, 0.02);
    }
    const [mean] = arrowsOf(drawings[1]!.querySelectorAll('path')[1]!.getAttribute('d')!);
    const { vector } = means([...GROUPS[1]]);
    expect(mean!.meridian).to.be.closeTo(vector.meridian, 0.01);
    // Drawn in whole px, 60 of them for a dioptre.
    expect(mean!.magnitude).to.be.closeTo(vector.magnitude, 0.5 / 60);
  });

  it('has the entry where the text says that each seat sees it', async () => {
    const lesson = await open('surgeons-chair');
    const seen: string[] = [];
    await walk(lesson, () => {
      for (const { shadowRoot } of lesson.views) {
        const entry = shadowRoot!.querySelector('[part~=incision]')?.getBoundingClientRect();
        const eye = shadowRoot!.querySelector('[part~=limbus]')!.getBoundingClientRect();
        if (!entry) continue;
        const [x, y] = [entry.x + entry.width / 2 - eye.x - eye.width / 2, entry.y + entry.height / 2 - eye.y - eye.height / 2];
        const side = Math.abs(x) > Math.abs(y) ? (x < 0 ? 'left' : 'right') : y < 0 ? 'top' : 'bottom';
        seen.push(`${/at 180° (temporal|nasal)/.exec(plain(shadowRoot!.textContent))![1]} ${side}`);
      }
    });
    expect(seen.join(', ')).to.equal('temporal left, temporal right, temporal bottom, nasal left, nasal right, nasal top');
  });
});
