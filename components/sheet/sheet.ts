import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { cyclotorsion } from '../../core/numbers.js';
import type { Cyclotorsion } from '../../core/numbers.js';
import { TORSION } from '../../core/cyclotorsion-constants.js';
import { layoutCornea } from '../internal/dial-layout.js';
import type { CorneaLayout } from '../internal/dial-layout.js';
import { AstigDrawing } from '../internal/drawing.js';
import { directionOf } from '../internal/language/direction.js';
import { angle } from '../internal/format.js';
import type { Say } from '../internal/language/language.js';
import { numberConverter } from '../internal/number-attribute.js';
import { placeWords } from '../internal/place.words.js';
import { isPlanned } from '../internal/planned.js';
import { property } from '../internal/property.js';
import { tokens } from '../internal/tokens.js';
import { upwards } from '../internal/tree.js';
import { VIEWPOINTS, viewpointTurn } from '../internal/viewpoint.js';
import type { Viewpoint } from '../internal/viewpoint.js';
import { eyeId, sharedWords } from '../internal/words.js';
import { drawSheet, viewBox } from './sheet.drawing.js';
import { sheetDrawingStyles } from './sheet.drawing.styles.js';
import { face } from './sheet.face.js';
import { sheetPaperStyles } from './sheet.paper.styles.js';
import { itemsOf } from './sheet.plan.js';
import { sheetStyles } from './sheet.styles.js';
import { cautions, checks, depth, footnotes, marks, printed, table, torsion } from './sheet.sections.js';
import type { Sheet } from './sheet.sections.js';
import { sheetWords } from './sheet.words.js';
import type { SheetId } from './sheet.words.js';

/** Width of the drawing and size of the text from which its own is made, user units: the same on every screen and paper. */
const PAPER = { width: 380, font: 22, family: '' } as const;

/** With more cautions than these the text is smaller, so that all of them have room on one page. */
const FEW = 4;

/**
 * One printed page for marking and surgery: the eye from where the surgeon sits, the ink marks on the seated patient, each
 * cut in degrees, clock hours and millimetres, depth and thickness, the turn of the eye on lying down, cautions, and room
 * to sign. Where the plan cannot be relied on it prints “do not use” and no eye.
 *
 * @tagname astig-sheet
 * @slot patient - who the patient is, from the host page; without it there is an empty line to write on
 * @csspart sheet - the whole page
 * @csspart side - the name of the side, large
 * @csspart face - the small face that shows which eye
 * @csspart drawing - the eye
 * @csspart limbus - the edge of the cornea
 * @csspart ink-mark - where ink goes
 * @csspart reference-mark - the reference mark
 * @csspart incision - the incision, to scale
 * @csspart arc - a relaxing arc, to scale
 * @csspart lens-axis - the meridian of the toric lens
 * @csspart nose - the side of the nose
 * @csspart brow - the side of the brow
 * @csspart number - a number of the table, in the drawing
 * @csspart marks - how the seated patient is marked
 * @csspart depth - depth and thickness
 * @csspart torsion - the turn of the eye
 * @csspart table - what is done where
 * @csspart caution - one caution
 * @csspart checks - boxes and lines to sign on
 * @csspart blank - an empty line
 * @csspart estimate - that local rules and the surgeon decide; always shown
 * @csspart void - what stands instead of a sheet that must not be used
 * @cssprop [--astig-sheet-width=46em] - greatest width of the preview on screen
 * @cssprop [--astig-print-text=10pt] - size of the text in print, at which the sheet takes one page
 */
export class AstigSheet extends AstigDrawing {
  static override styles = [tokens, sheetDrawingStyles, sheetStyles, sheetPaperStyles];

  /** From where the eye is seen: `facing`, `above` (surgeon at the head) or `temporal` (surgeon at the side). */
  @property() viewpoint: Viewpoint = 'facing';

  /** Where a reference mark was put on the seated patient, degrees 0–360 as seen facing the patient. */
  @property({ attribute: 'mark-seated', converter: numberConverter }) markSeated: number | null = null;

  /**
   * Where the same mark is seen when the patient lies, degrees 0–360. Every degree to use lying is then shifted by
   * lying − seated, the shortest way.
   */
  @property({ attribute: 'mark-lying', converter: numberConverter }) markLying: number | null = null;

  /** Set between the events before and after printing, when something is moving or is of another case. */
  #changing = false;

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener('beforeprint', this.#beforePrint);
    window.addEventListener('afterprint', this.#afterPrint);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('beforeprint', this.#beforePrint);
    window.removeEventListener('afterprint', this.#afterPrint);
  }

  /**
   * Prints this sheet and nothing else of the page, from a frame that is taken away afterwards. Nothing is sent or stored.
   * A page that is itself in a frame without leave for dialogs cannot print.
   */
  async print(): Promise<void> {
    await this.updateComplete;
    const { printAlone } = await import('./sheet.print.js');
    this.#beforePrint();
    try {
      await printAlone(this);
    } finally {
      this.#afterPrint();
    }
  }

  protected override render(): TemplateResult {
    const { language } = this;
    const say = language.say(sheetWords);
    const sheet = this.#sheet(say);
    const content = 'why' in sheet ? voided(sheet.why, say) : this.#page(sheet);
    const eye = 'why' in sheet ? '' : sheet.plan.eye;
    const many = 'why' in sheet || printed(sheet).length <= FEW ? '' : 'many';
    return html`<section class="sheet ${eye} ${many}" part="sheet" lang=${language.tag} dir=${directionOf(language.tag)} aria-label=${eye ? say('name', { eye: language.say(sharedWords)(eyeId(eye)) }) : say('doNotUse')}>
        ${content}
      </section>
      <p class="bar"><button type="button" @click=${() => void this.print().catch(reportError)}>${say('print')}</button></p>
      ${'why' in sheet ? nothing : this.pictureRow()}`;
  }

  /** The sheet, or why there is none. */
  #sheet(say: Say<SheetId>): Sheet | { why: TemplateResult | string } {
    const { model, language } = this;
    if (!model) return { why: say('whyNoCase') };
    if (model.refusals.length > 0) return { why: html`${say('whyRefused')}<ul>${model.refusals.map((refusal) => html`<li>${language.refusal(refusal)}</li>`)}</ul>` };
    if (this.#changing) return { why: say('whyChanging') };
    if (!isPlanned(model.plan)) return { why: say('whyNothing') };
    const { plan, outcome } = model;
    const torsion = this.#torsion();
    if (torsion === 'refused') return { why: say('whyMarks', { seated: this.#reading(this.markSeated), lying: this.#reading(this.markLying), most: angle(TORSION.most.value, language.numbers) }) };
    return { plan, outcome, torsion, items: itemsOf(plan, torsion), seated: this.markSeated, lying: this.markLying, language, say };
  }

  #torsion(): Cyclotorsion | 'refused' | null {
    const { markSeated: seated, markLying: lying } = this;
    if (seated === null && lying === null) return null;
    try {
      // A mark that has only been put is checked all the same.
      const found = cyclotorsion({ seated: seated!, lying: lying ?? seated! }, this.model!.plan.eye);
      return lying === null ? null : found;
    } catch {
      return 'refused';
    }
  }

  #reading(value: number | null): string {
    return Number.isFinite(value) ? angle(value!, this.language.numbers) : '–';
  }

  #page(sheet: Sheet): TemplateResult {
    const { plan, say, language } = sheet;
    const view = VIEWPOINTS.includes(this.viewpoint) ? this.viewpoint : 'facing';
    const turn = viewpointTurn(view, plan.eye);
    const name = language.say(sharedWords)(plan.eye);
    return html`<header>
        <div class="which">${face(plan.eye, turn)}<div><h2 part="side">${name}</h2><p>${say(plan.eye === 'right' ? 'ownRight' : 'ownLeft')}</p></div></div>
        <div class="who"><span>${say('title')}</span><slot name="patient"><span class="fill">${say('patient')}<span class="blank" part="blank"></span></span></slot></div>
      </header>
      ${cautions(sheet)}
      <div class="columns">
        ${this.#drawing(sheet, view, turn)}
        <div>${marks(sheet)} ${depth(sheet)} ${torsion(sheet, TORSION.usual.value)}</div>
      </div>
      ${table(sheet)} ${checks(sheet)} ${footnotes(sheet)}`;
  }

  #drawing(sheet: Sheet, view: Viewpoint, turn: number): TemplateResult {
    const { plan, items, say, language } = sheet;
    const layout = this.#layout(turn);
    const turned = { by: sheet.torsion?.turn ?? 0, reference: sheet.lying ?? sheet.seated };
    return html`<figure class="plate"><span class="probe"></span>
      <svg part="drawing" role="img" aria-label=${say('drawing', { eye: language.say(sharedWords)(plan.eye), view: say(view) })} font-size=${layout.size} viewBox=${viewBox(plan.eye, layout)}>
        ${drawSheet(plan, items, layout, turned)}
      </svg>
      <figcaption>${say(view)} ${say(sheet.torsion ? 'drawnLying' : 'drawnSitting')}</figcaption>
    </figure>`;
  }

  #layout(turn: number): CorneaLayout {
    const { eye } = this.model!.plan;
    const place = this.language.say(placeWords);
    return layoutCornea({ ...PAPER, turn, eye, title: this.language.say(sharedWords)(eye), sides: { temporal: place('temporal'), nasal: place('nasal') } });
  }

  /**
   * A page may set a plan and print in the same breath, before anything is drawn anew: the case takes in what was set, and
   * this is drawn now. What is still being moved, or is no longer of the case that the page names, must not be used.
   */
  readonly #beforePrint = (): void => {
    const owner = this.#owner();
    // Asking for the outcome makes the case take in what was set.
    this.#changing = Boolean(this.model && (!owner?.outcome || owner.model !== this.model || this.model.moving));
    this.requestUpdate();
    this.performUpdate();
  };

  readonly #afterPrint = (): void => {
    if (this.#changing) this.requestUpdate();
    this.#changing = false;
  };

  #owner(): { model?: unknown; outcome?: unknown } | null {
    if (this.for) return (this.getRootNode() as Document).getElementById?.(this.for) as object | null;
    for (const node of upwards(this)) if ((node as Element).localName === 'astig-case') return node as object;
    return null;
  }
}

/** What stands instead of a sheet: no eye, no side, nothing that could be taken for a plan. */
function voided(why: TemplateResult | string, say: Say<SheetId>): TemplateResult {
  return html`<div class="void" part="void"><h2>${say('doNotUse')}</h2><div>${why}</div><p>${say('noSheet')}</p></div>`;
}
