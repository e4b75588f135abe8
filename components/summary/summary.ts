import { html, nothing } from 'lit';
import type { PropertyValues, TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import type { Astigmatism, PlanStep } from '../../core/numbers.js';
import type { SourceId } from '../../core/references.js';
import { astigmatismText, dioptres } from '../internal/format.js';
import { SourceController } from '../internal/source-controller.js';
import { sourceStyles } from '../internal/source-styles.js';
import { tokens } from '../internal/tokens.js';
import { AstigView } from '../internal/view.js';
import { ESTIMATE, EYE_NAME, LEVEL_NAME, NO_CASE, SOURCE } from '../internal/words.js';
import { summaryStyles } from './summary.styles.js';
import { iconArray } from './icon-array.js';
import { LIMITS_TOLD, announcement, chanceSentence, meanShiftText, ofHundred, planned, ruleText, stepRow } from './summary.words.js';

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
 */
export class AstigSummary extends AstigView {
  static override styles = [tokens, sourceStyles, summaryStyles];

  /** What the live region says; changes when a movement has ended. */
  @state() private spoken = '';

  private readonly source = new SourceController(this);

  /** What was last announced, or was there at the start: that is read as part of the page. Null before. */
  private heard: string | null = null;

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    if (!this.model || this.model.moving) return;
    const text = announcement(this.model.outcome);
    if (this.heard !== null && text !== this.heard) this.spoken = text;
    this.heard = text;
  }

  protected override render(): TemplateResult {
    const { model } = this;
    if (!model) return html`<p class="quiet">${NO_CASE}</p>`;
    return html`${this.refused()}
      <section aria-label="Summary, ${EYE_NAME[model.plan.eye].toLowerCase()}">
        ${this.figures()} ${this.chance()} ${this.steps()} ${this.cautions()}
      </section>
      <p class="visually-hidden" role="status" aria-live="polite">${this.spoken}</p>
      <p class="quiet">${ESTIMATE}</p>
      ${this.source.render()}`;
  }

  private refused(): TemplateResult | typeof nothing {
    const { refusals } = this.model!;
    if (refusals.length === 0) return nothing;
    return html`<div class="refused" part="refused" role="alert">
      <p>These settings cannot be taken. What is shown is the last good plan:</p>
      <ul>
        ${refusals.map(({ message }) => html`<li>${message}</li>`)}
      </ul>
    </div>`;
  }

  private figures(): TemplateResult {
    const { plan, outcome } = this.model!;
    return html`<dl class="figures">
      ${this.figure('before', `Before, ${EYE_NAME[plan.eye].toLowerCase()}`, outcome.before)}
      ${this.figure('after', 'Remaining, as expected', outcome.after)}
      ${this.figure('intended', 'Remaining, if all of the intended effect were reached', outcome.afterIntended)}
    </dl>`;
  }

  private figure(id: 'before' | 'after' | 'intended', name: string, value: Astigmatism): TemplateResult {
    return html`<div class=${id} part=${id}>
      <dt>${name}</dt>
      <dd class="large">${this.source.button({ figure: id }, astigmatismText(value))}</dd>
      <dd>${ruleText(value)}</dd>
    </div>`;
  }

  private chance(): TemplateResult {
    const { outcome } = this.model!;
    const [first, ...others] = LIMITS_TOLD.map((limit) => ({ limit, eyes: ofHundred(outcome.chanceWithin(limit)) }));
    const rest = others.map(({ limit, eyes }) => `${dioptres(limit)}: ${eyes}`).join(', ');
    return html`<div class="chance" part="chance">
      <p>${this.source.button({ figure: 'chance' }, chanceSentence(first!.eyes, first!.limit))} <span class="quiet">(${rest} of 100)</span></p>
      ${iconArray(first!.eyes)}
    </div>`;
  }

  private steps(): TemplateResult {
    const { plan, outcome } = this.model!;
    return html`<div class="wrap">
      <table part="steps">
        <caption class="visually-hidden">
          What each step does
        </caption>
        <thead>
          <tr>
            <th scope="col">Step</th>
            <th scope="col">Expected</th>
            <th scope="col">If fully reached</th>
          </tr>
        </thead>
        <tbody>
          ${outcome.steps.map((step) => this.step(step))}
          ${planned(plan) ? nothing : html`<tr><td colspan="3">No incision, arc or toric lens is planned yet.</td></tr>`}
          <tr>
            <th scope="row">Mean corneal power</th>
            <td colspan="2">${this.source.button({ figure: 'meanPower' }, meanShiftText(outcome.meanPowerShift))}</td>
          </tr>
        </tbody>
      </table>
    </div>`;
  }

  private step(step: PlanStep): TemplateResult {
    const { name, expected, intended } = stepRow(step, this.model!.plan.arcCount);
    const own = step.basis === 'own';
    return html`<tr data-source=${step.source}>
      <th scope="row">${name}${own ? html` <span class="own">own figure</span>` : nothing}</th>
      <td data-label="Expected">${this.source.button({ figure: step.source, own }, expected)}</td>
      <td data-label="If fully reached">${intended}</td>
    </tr>`;
  }

  private cautions(): TemplateResult | typeof nothing {
    const { cautions } = this.model!.outcome;
    if (cautions.length === 0) return nothing;
    return html`<ul class="cautions" aria-label="Cautions">
      ${cautions.map(
        ({ id, level, text, source }) =>
          html`<li class=${level} part="caution" data-id=${id} data-level=${level}>
            <strong>${LEVEL_NAME[level]}:</strong> ${text} ${this.source.button({ source: source as SourceId }, SOURCE, `Source of: ${text}`)}
          </li>`,
      )}
    </ul>`;
  }
}
