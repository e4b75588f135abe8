import { html, nothing } from 'lit';
import type { PropertyValues, TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import { references } from '../../core/index.js';
import type { Caution, CompletePlan, PlanOutcome, SourceId } from '../../core/index.js';
import { astigmatismText } from '../internal/format.js';
import { tokens } from '../internal/tokens.js';
import { AstigView } from '../internal/view.js';
import { ESTIMATE, EYE_NAME, NO_CASE } from '../internal/words.js';
import { summaryStyles } from './summary.styles.js';
import { LEVEL_NAME, announcement, meanShiftText, planned, ruleText, stepRow } from './summary.words.js';

/**
 * The case in words and numbers: before, each step, what is left as expected and if the whole intended effect were
 * reached, the shift of the mean power, and cautions. Speaks the result after a change, not while something is dragged.
 *
 * @tagname astig-summary
 * @csspart before - the astigmatism as measured
 * @csspart after - what is expected to be left
 * @csspart intended - what would remain if the whole intended effect were reached
 * @csspart steps - the table of steps
 * @csspart caution - one caution; `data-id` and `data-level` say which
 * @csspart refused - what the page has set and could not be taken
 */
export class AstigSummary extends AstigView {
  static override styles = [tokens, summaryStyles];

  /** What the live region says; changes when a movement has ended. */
  @state() private spoken = '';

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
    const { plan, outcome } = model;
    return html`${this.refused()}
      <section aria-label="Summary, ${EYE_NAME[plan.eye].toLowerCase()}">
        ${figures(plan, outcome)} ${steps(plan, outcome)} ${cautionList(outcome.cautions)}
      </section>
      <p class="visually-hidden" role="status" aria-live="polite">${this.spoken}</p>
      <p class="quiet">${ESTIMATE}</p>`;
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
}

function figures(plan: CompletePlan, { before, after, afterIntended }: PlanOutcome): TemplateResult {
  return html`<dl class="figures">
    <div class="before" part="before">
      <dt>Before, ${EYE_NAME[plan.eye].toLowerCase()}</dt>
      <dd class="large">${astigmatismText(before)}</dd>
      <dd>${ruleText(before)}</dd>
    </div>
    <div class="after" part="after">
      <dt>Remaining, as expected</dt>
      <dd class="large">${astigmatismText(after)}</dd>
      <dd>${ruleText(after)}</dd>
    </div>
    <div part="intended">
      <dt>Remaining, if all of the intended effect were reached</dt>
      <dd class="large">${astigmatismText(afterIntended)}</dd>
      <dd>${ruleText(afterIntended)}</dd>
    </div>
  </dl>`;
}

function steps(plan: CompletePlan, outcome: PlanOutcome): TemplateResult {
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
        ${outcome.steps.map((step) => {
          const { name, expected, intended } = stepRow(step, plan.arcCount);
          return html`<tr>
            <th scope="row">${name}</th>
            <td data-label="Expected">${expected}</td>
            <td data-label="If fully reached">${intended}</td>
          </tr>`;
        })}
        ${planned(plan) ? nothing : html`<tr><td colspan="3">No incision, arc or toric lens is planned yet.</td></tr>`}
        <tr>
          <th scope="row">Mean corneal power</th>
          <td colspan="2">${meanShiftText(outcome.meanPowerShift)}</td>
        </tr>
      </tbody>
    </table>
  </div>`;
}

function cautionList(cautions: readonly Caution[]): TemplateResult | typeof nothing {
  if (cautions.length === 0) return nothing;
  return html`<ul class="cautions" aria-label="Cautions">
    ${cautions.map(
      ({ id, level, text, source }) =>
        html`<li class=${level} part="caution" data-id=${id} data-level=${level}>
          <strong>${LEVEL_NAME[level]}:</strong> ${text} <span class="quiet">(${sourceText(source)})</span>
        </li>`,
    )}
  </ul>`;
}

function sourceText(source: string): string {
  const { authors, title, year } = references[source as SourceId];
  return year === null ? title.toLowerCase() : `${authors.split(',')[0]} ${year}`;
}
