import { html, nothing } from 'lit';
import type { PropertyValues, TemplateResult } from 'lit';
import type { Astigmatism, PlanStep } from '../../core/numbers.js';
import type { SourceId } from '../../core/references.js';
import { cautionText } from '../internal/caution.js';
import { astigmatismText } from '../internal/format.js';
import { iconArray, iconArrayStyles, ofHundred } from '../internal/icon-array.js';
import type { Say } from '../internal/language/language.js';
import { Later } from '../internal/later.js';
import { noticeStyles, refusedBox } from '../internal/notices.js';
import { isPlanned } from '../internal/planned.js';
import { state } from '../internal/property.js';
import { SourceController } from '../internal/source-controller.js';
import { sourceStyles } from '../internal/source-styles.js';
import { tableStyles } from '../internal/table-styles.js';
import { tokens } from '../internal/tokens.js';
import { AstigView } from '../internal/view.js';
import { eyeId, sharedWords } from '../internal/words.js';
import { summaryStyles } from './summary.styles.js';
import { LIMITS_TOLD, chanceSentence, meanShiftText, ruleText, stepRow, widerChances } from './summary.speech.js';
import { summaryWords } from './summary.words.js';

/**
 * The case in words and numbers: before, each step, what is left as expected and if the whole intended effect were
 * reached, the shift of the mean power, and cautions. Speaks the result after a change, not while something is dragged.
 *
 * @tagname astig-summary
 * @csspart before - the astigmatism as measured
 * @csspart after - what is expected to be left
 * @csspart intended - what would remain if the whole intended effect were reached
 * @csspart chance - how many of 100 eyes like this would end with little, in words and as dots
 * @csspart steps - the table of steps
 * @csspart caution - one caution; `data-id` and `data-level` say which
 * @csspart refused - what the page has set and could not be taken
 * @csspart dots - the dots
 * @csspart sourced - a figure that opens its source
 * @csspart source - what opens then
 */
export class AstigSummary extends AstigView {
  static override styles = [tokens, sourceStyles, iconArrayStyles, noticeStyles, tableStyles, summaryStyles];

  /** What the live region says; changes when a movement has ended. */
  @state() private spoken = '';

  readonly #source = new SourceController(this, this.language);

  readonly #announcer = new Later(this, async () => new (await import('./summary.announcer.js')).Announcer());

  get #say(): Say<keyof typeof summaryWords.en> {
    return this.language.say(summaryWords);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    if (this.model && !this.model.moving) this.spoken = this.#announcer.need()?.hear(this.model.outcome, this.language) ?? '';
  }

  protected override render(): TemplateResult {
    const { model } = this;
    const say = this.#say;
    const shared = this.language.say(sharedWords);
    if (!model) return html`<p class="quiet">${shared('noCase')}</p>`;
    return html`${refusedBox(say('refused'), model.refusals.map((refusal) => this.language.refusal(refusal)))}
      <section aria-label=${say('name', { eye: shared(eyeId(model.plan.eye)) })}>
        ${this.#figures()} ${this.#chance()} ${this.#steps()} ${this.#cautions()}
      </section>
      <p class="visually-hidden" role="status" aria-live="polite">${this.spoken}</p>
      <p class="quiet">${shared('estimate')}</p>
      ${this.#source.render()}`;
  }

  #figures(): TemplateResult {
    const say = this.#say;
    const { plan, outcome } = this.model!;
    const eye = this.language.say(sharedWords)(eyeId(plan.eye));
    return html`<dl class="figures">
      ${this.#figure('before', say('before', { eye }), outcome.before)}
      ${this.#figure('after', say('after'), outcome.after)}
      ${this.#figure('intended', say('intended'), outcome.afterIntended)}
    </dl>`;
  }

  #figure(id: 'before' | 'after' | 'intended', name: string, value: Astigmatism): TemplateResult {
    return html`<div class=${id} part=${id}>
      <dt>${name}</dt>
      <dd class="large">${this.#source.button({ figure: id }, astigmatismText(value, this.language.numbers))}</dd>
      <dd>${ruleText(value, this.language)}</dd>
    </div>`;
  }

  #chance(): TemplateResult {
    const { outcome } = this.model!;
    const eyes = ofHundred(outcome.chanceWithin(LIMITS_TOLD[0]));
    return html`<div class="chance" part="chance">
      <p>${this.#source.button({ figure: 'chance' }, chanceSentence(eyes, this.language))} <span class="quiet">${widerChances(outcome, this.language)}</span></p>
      ${iconArray(eyes)}
    </div>`;
  }

  #steps(): TemplateResult {
    const say = this.#say;
    const { plan, outcome } = this.model!;
    return html`<div class="wrap">
      <table part="steps">
        <caption class="visually-hidden">
          ${say('steps')}
        </caption>
        <thead>
          <tr>
            <th scope="col">${say('step')}</th>
            <th scope="col">${say('expected')}</th>
            <th scope="col">${say('reached')}</th>
          </tr>
        </thead>
        <tbody>
          ${outcome.steps.map((step) => this.#step(step))}
          ${isPlanned(plan) ? nothing : html`<tr><td colspan="3">${say('nothingPlanned')}</td></tr>`}
          <tr>
            <th scope="row">${say('meanPower')}</th>
            <td colspan="2">${this.#source.button({ figure: 'meanPower' }, meanShiftText(outcome.meanPowerShift, this.language))}</td>
          </tr>
        </tbody>
      </table>
    </div>`;
  }

  #step(step: PlanStep): TemplateResult {
    const say = this.#say;
    const { name, expected, intended } = stepRow(step, this.model!.plan.arcCount, this.language);
    const own = step.basis === 'own';
    return html`<tr data-source=${step.source}>
      <th scope="row">${name}${own ? html` <span class="own">${say('own')}</span>` : nothing}</th>
      <td data-label=${say('expected')}>${this.#source.button({ figure: step.source, own }, expected)}</td>
      <td data-label=${say('reached')}>${intended}</td>
    </tr>`;
  }

  #cautions(): TemplateResult | typeof nothing {
    const { language } = this;
    const say = this.#say;
    const shared = language.say(sharedWords);
    const { cautions } = this.model!.outcome;
    if (cautions.length === 0) return nothing;
    return html`<ul class="cautions" aria-label=${say('cautions')}>
      ${cautions.map((caution) => {
        const { id, level, source } = caution;
        const text = cautionText(caution, language);
        return html`<li class=${level} part="caution" data-id=${id} data-level=${level}>
          <strong>${say('caution', { level: shared(level) })}</strong> ${text}
          ${this.#source.button({ source: source as SourceId }, shared('source'), say('sourceOf', { text }))}
        </li>`;
      })}
    </ul>`;
  }
}
