import { html, nothing } from 'lit';
import type { PropertyValues, TemplateResult } from 'lit';
import type { JudgeOptions, Mapping } from '../../core/outcomes.js';
import type { CaseModel } from '../internal/case-model.js';
import { buttonStyles } from '../internal/button-styles.js';
import { controlStyles } from '../internal/control-styles.js';
import { AstigDrawing } from '../internal/drawing.js';
import { drawingStyles } from '../internal/drawing-styles.js';
import { percent } from '../internal/format.js';
import type { Say } from '../internal/language/language.js';
import { Later } from '../internal/later.js';
import { property, state } from '../internal/property.js';
import { tableStyles } from '../internal/table-styles.js';
import { tokens } from '../internal/tokens.js';
import type { DeskClient } from './outcomes.client.js';
import type { Findings, OutcomeRow } from './outcomes.messages.js';
import type { Results } from './outcomes.results.js';
import { outcomesStyles } from './outcomes.styles.js';
import { outcomesWords } from './outcomes.words.js';

/**
 * The surgeon's own results: a table is dropped, pasted or given, and shown as vectors before, after and induced, with
 * figures, groups and a list; own figures can be put into the case. The data stay in the page. A row that cannot be taken
 * is told with its line and reason, and the rest is counted.
 *
 * @tagname astig-outcomes
 * @csspart drop - where a file may be dropped
 * @csspart button - a button
 * @csspart ring - a circle of equal dioptres
 * @csspart centroid - the mean of a series
 * @csspart mean-ellipse - holds the true mean
 * @csspart eyes-ellipse - holds 95 of 100 eyes
 * @cssprop [--astig-size=34rem] - greatest width of the drawing
 * @fires {AstigInputEvent} astig-input - when own figures are put into the case
 * @fires {AstigChangeEvent} astig-change - the same, once
 */
export class AstigOutcomes extends AstigDrawing {
  static override styles = [tokens, drawingStyles, tableStyles, buttonStyles, controlStyles, outcomesStyles];

  /** The table: delimited text with headings, or rows with values by the names of `OUTCOME_COLUMNS`. */
  @property({ attribute: false }) data: string | readonly OutcomeRow[] | null = null;

  /** Own matching of columns: number (from 0) or text of the heading by column. */
  @property({ attribute: false }) mapping: Mapping = {};

  /** What the plans were made with; without it, the figures of the model. */
  @property({ attribute: false }) judge: JudgeOptions = {};

  @state() private share: number | null = null;
  /** What became of the reading; put into words where it is shown, for a language may come later than the table. */
  @state() private said: Parameters<Say<keyof typeof outcomesWords.en>> | null = null;
  @state() private over = false;

  #client: DeskClient | null = null;
  #findings: Findings | null = null;
  #reading = 0;
  /** What had the focus before it was drawn anew. */
  #stood: Element | null = null;
  readonly #results = new Later<Results>(this, async () => new (await import('./outcomes.results.js')).Results(this, this.language, this.size));

  /** Fulfilled when nothing is being read. */
  get ready(): Promise<void> {
    return this.updateComplete.then(() => this.#work);
  }

  #work: Promise<void> = Promise.resolve();

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#client?.close();
    this.#client = null;
    this.#reading += 1;
    this.share = null;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    // What had been read went with the desk.
    if (this.hasUpdated && this.data !== null) this.#read();
  }

  /**
   * The diagram as an SVG file of its own.
   * @throws Error while nothing is drawn.
   */
  override toSVG(): string {
    return this.#results.part ? this.#results.part.whole(() => super.toSVG()) : super.toSVG();
  }

  /** Chooses what a column holds and reads again. @internal */
  remap(mapping: Mapping): void {
    this.mapping = mapping;
  }

  /** @internal */
  get desk(): DeskClient | null {
    return this.#client;
  }

  /** The case that takes own figures, where the user may give it some. @internal */
  get taker(): CaseModel | null {
    return this.editable && !this.model!.moving ? this.model : null;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    if (changed.has('data') || changed.has('mapping') || changed.has('judge')) {
      if (this.data !== null) this.#read();
      else this.#findings = null;
    }
    this.#stood = this.shadowRoot?.activeElement ?? null;
  }

  protected override updated(changed: PropertyValues<this>): void {
    super.updated(changed);
    this.#results.part?.drawn();
    // A button goes with the reading, and most things with the eyes; who stood on one stands where a table is chosen.
    if (this.#stood && !this.#stood.isConnected) this.shadowRoot!.querySelector('input')!.focus();
  }

  protected override render(): TemplateResult {
    const say = this.language.say(outcomesWords);
    const findings = this.#findings;
    const results = findings && this.#results.need();
    return html`<section aria-label=${say('name')}>
      <div class="drop ${this.over ? 'over' : ''}" part="drop" @dragover=${this.#onDrag} @dragleave=${() => (this.over = false)} @drop=${this.#onDrop}>
        <span class="file"><button part="button" type="button" tabindex="-1" aria-hidden="true">${say('choose')}</button>
          <input type="file" accept=".csv,.tsv,.txt,text/*" aria-label=${say('choose')} @change=${this.#onFile} /></span>
        ${say('drop')}
        <details><summary>${say('paste')}</summary>
          <textarea aria-label=${say('paste')} spellcheck="false"></textarea>
          <button part="button" type="button" @click=${this.#onPaste}>${say('pasted')}</button>
        </details>
      </div>
      ${this.share === null ? nothing : html`<p><label>${say('reading')} <progress max="1" .value=${this.share}></progress> ${percent(this.share, this.language.numbers)}</label>
        <button part="button" type="button" class="cancel" @click=${this.#cancel}>${say('cancel')}</button></p>`}
      <p role="status">${this.said ? say(...this.said) : ''}</p>
      ${results ? results.render(findings, this.mapping) : nothing}
      ${findings?.counted ? this.pictureRow() : nothing}
    </section>`;
  }

  readonly #onDrag = (event: DragEvent): void => {
    event.preventDefault();
    this.over = true;
  };

  readonly #onDrop = (event: DragEvent): void => {
    event.preventDefault();
    this.over = false;
    const file = event.dataTransfer?.files[0];
    const text = event.dataTransfer?.getData('text/plain');
    if (file) void this.#open(file);
    else if (text) this.#take(text);
  };

  readonly #onFile = (event: Event): void => {
    event.stopPropagation();
    const input = event.currentTarget as HTMLInputElement;
    const file = input.files?.[0];
    if (file) void this.#open(file);
    // The same file may be chosen again when it has been mended.
    input.value = '';
  };

  readonly #onPaste = (): void => {
    const text = this.renderRoot.querySelector('textarea')!.value;
    if (text.trim()) this.#take(text);
  };

  async #open(file: File): Promise<void> {
    try {
      this.#take(await file.text());
    } catch (error) {
      this.said = ['failed', { reason: (error as Error).message }];
    }
  }

  /** Another table: what was said of the columns of the last one does not hold for it. */
  #take(text: string): void {
    this.mapping = {};
    this.data = text;
  }

  readonly #cancel = (): void => {
    this.#client?.cancel();
    this.#reading += 1;
    this.share = null;
    this.#work = Promise.resolve();
    this.said = ['cancelled'];
  };

  #read(): void {
    const number = (this.#reading += 1);
    this.share = 0;
    this.said = null;
    this.#work = this.#ask(number);
  }

  async #ask(number: number): Promise<void> {
    try {
      const { DeskClient: Client } = await import('./outcomes.client.js');
      if (number !== this.#reading) return;
      this.#client?.cancel();
      this.#client ??= new Client();
      const progress = (share: number): void => void (number === this.#reading && (this.share = share));
      const reply = await this.#client.ask({ kind: 'read', data: this.data!, mapping: this.mapping, judge: this.judge }, progress);
      if (number !== this.#reading || reply.kind !== 'read') return;
      this.#findings = reply.findings;
      this.said = ['done', { counted: reply.findings.counted, rows: reply.findings.rows }];
    } catch (error) {
      if (number !== this.#reading) return;
      this.said = ['failed', { reason: (error as Error).message }];
    }
    this.share = null;
  }
}
