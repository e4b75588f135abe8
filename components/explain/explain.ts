import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { iconArrayStyles } from '../internal/icon-array.js';
import { directionOf } from '../internal/language/direction.js';
import { property } from '../internal/property.js';
import { SourceController } from '../internal/source-controller.js';
import { sourceStyles } from '../internal/source-styles.js';
import { tokens } from '../internal/tokens.js';
import { AstigView } from '../internal/view.js';
import { heading, sentences } from './explain.page.js';
import type { Page } from './explain.page.js';
import { printStyles } from './explain.print.styles.js';
import { SECTIONS } from './explain.sections.js';
import { explainStyles } from './explain.styles.js';
import { explainWords } from './explain.words.js';

/** The heading of the page, which can be hidden or replaced like a section. */
const TITLE = 'title';

/**
 * The patient's page: what the shape of the eye does, what the surgeon may do about it, what is likely of 100 people,
 * what nobody can promise, glasses and doing nothing as real choices, questions to bring along, and when to call.
 * Shows the general parts without a case too. Made to be printed on two pages.
 *
 * @tagname astig-explain
 * @slot title - instead of the heading and the first lines
 * @slot shape - instead of the section on what astigmatism is
 * @slot surgery - instead of the section on what the surgeon can do
 * @slot likely - instead of the section with this eye's figures
 * @slot promise - instead of the section on what nobody can promise
 * @slot options - instead of the section on the choices
 * @slot questions - instead of the questions to bring along
 * @slot warning - instead of the warning signs
 * @slot contact - how the clinic can be reached, under the heading of that section
 * @csspart page - the whole page
 * @csspart section - each section
 * @csspart title - the heading and the first lines
 * @csspart shape - the section on what astigmatism is
 * @csspart surgery - the section on what the surgeon can do
 * @csspart likely - the section with this eye's figures
 * @csspart promise - the section on what nobody can promise
 * @csspart options - the section on the choices
 * @csspart questions - the questions to bring along
 * @csspart warning - the warning signs
 * @csspart contact - how the clinic can be reached
 * @csspart picture - a drawing
 * @csspart dots - a hundred people as dots
 * @csspart estimate - that figures are estimates and the surgeon decides; always shown
 * @csspart sourced - a figure that opens its source
 * @csspart source - what opens then
 * @cssprop [--astig-text=1.1875em] - size of the text on screen
 * @cssprop [--astig-print-text=12pt] - size of the text in print, at which the page takes two sheets
 */
export class AstigExplain extends AstigView {
  static override styles = [tokens, sourceStyles, iconArrayStyles, explainStyles, printStyles];

  /** Names of sections that are not shown, separated by spaces: `surgery questions`. */
  @property() hide: string | null = '';

  /** Level of the page's own heading, 1 to 4; the sections' are one deeper, or of this level where the title is hidden. */
  @property({ type: Number, attribute: 'heading-level' }) headingLevel = 2;

  private readonly source = new SourceController(this, this.language);

  protected override render(): TemplateResult {
    const { tag, numbers } = this.language;
    const say = this.language.say(explainWords);
    const hidden = new Set(this.hide?.split(/\s+/));
    const page: Page = { say, numbers, known: this.known(), level: this.level() + (hidden.has(TITLE) ? 0 : 1), source: this.source };
    return html`<section class="page" part="page" lang=${tag} dir=${directionOf(tag)} aria-label=${say('title')}>
        ${hidden.has(TITLE) ? nothing : this.titleOf(page)}
        ${Object.entries(SECTIONS).map(([id, content]) => (hidden.has(id) ? nothing : sectionOf(id, content(page))))}
        <p class="estimate" part="estimate">${say('estimate')}</p>
      </section>
      ${this.source.render()}`;
  }

  /** While settings are refused the plan is an older one, perhaps of another eye: a patient is told nothing of it. */
  private known(): Page['known'] {
    const { model } = this;
    if (!model) return 'none';
    return model.refusals.length > 0 ? 'refused' : { plan: model.plan, outcome: model.outcome };
  }

  private level(): number {
    const { headingLevel } = this;
    return headingLevel >= 1 && headingLevel <= 4 ? Math.round(headingLevel) : 2;
  }

  private titleOf({ say, known }: Page): TemplateResult {
    const about = typeof known === 'string' ? nothing : html`<strong>${say(known.plan.eye === 'right' ? 'aboutRight' : 'aboutLeft')}</strong>`;
    return sectionOf(TITLE, html`${heading(this.level(), say('title'))}<p>${sentences(say('lead'), '')}${about}</p>`);
  }
}

/** The clinic's words are put under the heading of the contact section; the other sections are replaced as a whole. */
function sectionOf(id: string, content: TemplateResult): TemplateResult {
  return html`<div id=${id} class="section ${id}" part="section ${id}">${id === 'contact' ? content : html`<slot name=${id}>${content}</slot>`}</div>`;
}
