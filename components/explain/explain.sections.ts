import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { iconArray, ofHundred } from '../internal/icon-array.js';
import { amountText, beside, heading, item, sentences } from './explain.page.js';
import type { Page } from './explain.page.js';
import { frontEye } from './explain.eye.js';
import { SIGNS, ball, cup, egg, glasses, list, phone, weather } from './explain.pictures.js';
import { surgery } from './explain.surgery.js';
import type { ExplainId } from './explain.words.js';

/** The sections in their order; each name is also that of its slot and of its part. */
export const SECTIONS: Record<string, (page: Page) => TemplateResult> = { shape, surgery, likely, promise, options, questions, warning, contact };

function shape(page: Page): TemplateResult {
  const { say, level } = page;
  return html`${heading(level, say('shapeTitle'))}
    <p>${say('shapeWindow')}</p>
    <div class="two">
      <figure>${ball}<figcaption>${say('shapeBall')}</figcaption></figure>
      <figure>${egg}<figcaption>${say('shapeEgg')}</figcaption></figure>
    </div>
    <p>${say('shapeName')}</p>
    ${measured(page)}`;
}

/** Nothing is said of an eye without astigmatism: it may be one of which no readings were given. */
function measured({ say, known, numbers, source }: Page): TemplateResult | typeof nothing {
  const magnitude = typeof known === 'string' ? 0 : known.outcome.before.magnitude;
  if (magnitude < 0.005) return nothing;
  const values = { amount: amountText(magnitude, numbers), number: magnitude, hundredths: Math.round(100 * magnitude) };
  return html`<p>${say('shapeMeasured', values)}</p>
    <p class="ask">${source.button({ figure: 'before' }, say('sourceMeasured'))}</p>`;
}

/** Limits of which the chance is told, D: not noticed by most (Villegas 2014), and one, which the texts say in words. */
const LITTLE = 0.5;
const SOME = 1;

function likely(page: Page): TemplateResult {
  const { say, known, level, numbers, source } = page;
  const title = heading(level, say('likelyTitle'));
  if (typeof known === 'string') return html`${title}<p>${say(known === 'none' ? 'likelyNone' : 'likelyRefused')}</p>`;
  const { outcome, plan } = known;
  const [little, some] = [LITTLE, SOME].map((limit) => ofHundred(outcome.chanceWithin(limit))) as [number, number];
  const unplanned = plan.incisionSite === null && plan.arcCount === 0 && !plan.lensCylinder;
  return html`${title}
    <p>${say(unplanned ? 'likelyUnplanned' : 'likelyPlan')}</p>
    <div class="two">
      <figure>
        ${iconArray(little)}<figcaption>${say('likelyLittle', { who: who(page, little), limit: amountText(LITTLE, numbers), hundredths: 100 * LITTLE })}</figcaption>
      </figure>
      <figure>
        ${iconArray(some)}<figcaption>${sentences(say('likelySome', { who: who(page, some) }), say('likelyMore', { who: who(page, 100 - some) }))}</figcaption>
      </figure>
    </div>
    <p>${say('likelyGuess')}</p>
    <p class="ask">${source.button({ figure: 'chance' }, say('sourceLikely'))} ${source.button({ source: 'villegas2014' }, say('sourceNotice'))}</p>`;
}

/** Always of 100, so that two numbers can be compared; never a bare nought or hundred, which would be a promise. */
function who({ say, numbers }: Page, people: number): string {
  if (people === 0) return say('peopleNone');
  return people === 100 ? say('peopleAll') : say('peopleAbout', { people: new Intl.NumberFormat(numbers).format(people), number: people });
}

function promise({ say, level }: Page): TemplateResult {
  return html`${heading(level, say('promiseTitle'))}
  ${beside(
    weather,
    html`<p>${say('promiseWeather')}</p>
      <p>${sentences(say('promiseHeal'), say('promiseGlasses'))}</p>
      <p>${say('promiseRisk')}</p>`,
  )}`;
}

function options(page: Page): TemplateResult {
  const { say, level } = page;
  return html`${heading(level, say('optionsTitle'))}
    <div class="three">
      ${item(page, glasses, say('glassesTitle'), html`<p>${say('glassesWhat')}</p>`)}
      ${item(page, cup, say('nothingTitle'), html`<p>${say('nothingWhat')}</p>`)}
      ${item(page, frontEye('arcs', null, ''), say('treatTitle'), html`<p>${say('treatWhat')}</p>`)}
    </div>
    <p>${say('optionsReal')}</p>`;
}

const QUESTIONS = ['askAmount', 'askNothing', 'askBest', 'askRisks', 'askGlasses', 'askHome', 'askCost'] as const satisfies ExplainId[];

/** Ticks stay on the page and reach nobody: the inner events are stopped. */
const keep = (event: Event): void => event.stopPropagation();

function questions({ say, level }: Page): TemplateResult {
  return html`${heading(level, say('questionsTitle'))}
  ${beside(
    list,
    html`<p class="how">${say('questionsHow')}</p>
      <ul class="ticks" @input=${keep} @change=${keep}>
        ${QUESTIONS.map((id) => html`<li><label><input type="checkbox" /><span>${say(id)}</span></label></li>`)}
        <li class="own"><span>${say('askOwn')}</span></li>
      </ul>`,
  )}`;
}

/** Common practice; the words file says so too. */
function warning({ say, level, source }: Page): TemplateResult {
  return html`${heading(level, say('warningTitle'))}
  ${beside(
    phone,
    html`<ul class="signs">
        ${(Object.keys(SIGNS) as (keyof typeof SIGNS)[]).map((id) => html`<li>${SIGNS[id]}<span>${say(id)}</span></li>`)}
      </ul>
      <p><strong>${say('warningNow')}</strong></p>
      <p class="ask">${source.button({ source: 'commonPractice' }, say('sourceWarning'))}</p>`,
  )}`;
}

function contact({ say, level }: Page): TemplateResult {
  return html`${heading(level, say('contactTitle'))}<slot name="contact"><p>${say('contactDefault')}</p></slot>`;
}
