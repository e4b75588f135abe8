import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { Mapping, OwnAdvice, OwnEvidence } from '../../core/outcomes.js';
import type { CaseModel } from '../internal/case-model.js';
import { movesOf } from '../internal/case-moves.js';
import { astigmatismText, decimal, dioptres, percent, withUnit } from '../internal/format.js';
import type { Language } from '../internal/language/language.js';
import { addStyles } from '../internal/restyle.js';
import type { SizeController } from '../internal/size-controller.js';
import { eyeId, sharedWords } from '../internal/words.js';
import type { AstigOutcomes } from './outcomes.js';
import { exportWords } from './outcomes.export-words.js';
import { DRAWN } from './outcomes.messages.js';
import type { Drawn, Findings, Listed } from './outcomes.messages.js';
import { PAINTED_FROM, nearestEye, paint } from './outcomes.parts.js';
import { CENTROIDS, bars, frameOf, plot } from './outcomes.plot.js';
import { resultsStyles } from './outcomes.results.styles.js';
import { resultsWords } from './outcomes.results.words.js';
import { asGiven, saidText } from './outcomes.said.js';
import { columnForm, figureTable, groupTable, leftOut, refusedList } from './outcomes.tables.js';

/** Eyes in the list at a time. */
const PAGE = 10;

/** px within which a click in the diagram takes the nearest eye. */
const REACH = 22;

/** Everything that is shown of a table once it has been read. */
export class Results {
  #findings: Findings | null = null;
  #shown = new Set<Drawn>(DRAWN);
  #chosen: number | null = null;
  #from = 0;
  #listed: Listed[] = [];
  #given = false;
  /** While a file is made of the drawing, which then has every eye in it. */
  #all = false;
  #painted = '';

  constructor(private readonly host: AstigOutcomes, private readonly language: Language, private readonly size: SizeController) {
    addStyles(host, resultsStyles);
    // Paint does not follow the colours of the page by itself.
    const scheme = matchMedia('(prefers-color-scheme: dark)');
    const repaint = (): void => host.requestUpdate();
    host.addController({ hostConnected: () => scheme.addEventListener('change', repaint), hostDisconnected: () => scheme.removeEventListener('change', repaint) });
  }

  render(findings: Findings, mapping: Mapping): TemplateResult {
    if (findings !== this.#findings) this.#start(findings);
    const { language } = this;
    const say = language.say(resultsWords);
    const { problems, notes, counted } = findings;
    return html`${problems.map((problem) => html`<p class="error">${saidText(problem, language)}</p>`)}
      ${refusedList(findings, language)}
      ${notes.length === 0 ? nothing : html`<details class="notes" open><summary>${say('notes')}</summary><ul>${notes.map((note) => html`<li>${saidText(note, language)}</li>`)}</ul></details>`}
      ${columnForm(findings, mapping, language, (next) => this.host.remap(next))}
      ${counted === 0 ? nothing : html`${this.#diagram(findings)}
        ${this.#own(findings)}
        <h3>${say('figures')}</h3>${figureTable(findings, language)}
        ${this.#bars(findings)}
        <h3>${say('groups')}</h3>${groupTable(findings, language)}
        ${this.#list(findings)}`}
      <p><button part="button" type="button" class="export" @click=${this.#export}>${say('export')}</button></p>
      <p class="quiet saved">${leftOut(findings, language)}</p>`;
  }

  /** Paints what is too much to be drawn, after the drawing it lies under. */
  drawn(): void {
    const root = this.host.shadowRoot!;
    const canvas = root.querySelector('canvas');
    const findings = this.#findings;
    if (!canvas || !findings) return;
    const frame = frameOf(findings, this.#shown, this.size);
    const ratio = devicePixelRatio || 1;
    const colours = DRAWN.map((name) => (root.querySelector(`.points.${name}`) ? getComputedStyle(root.querySelector(`.points.${name}`)!).stroke : ''));
    const key = [frame.half, frame.scale, ratio, ...colours].join();
    if (key === this.#painted) return;
    this.#painted = key;
    canvas.width = canvas.height = Math.round(2 * frame.half * ratio);
    const context = canvas.getContext('2d')!;
    DRAWN.forEach((name, index) => colours[index] && paint(context, findings.points[name], { scale: frame.scale, half: frame.half, ratio, colour: colours[index] }));
  }

  /** Makes something of the drawing while every eye is in it. */
  whole(make: () => string): string {
    if (!this.#findings || this.#findings.counted < PAINTED_FROM) return make();
    this.#all = true;
    this.host.requestUpdate();
    // What has been asked for is drawn at once.
    (this.host as unknown as { performUpdate(): void }).performUpdate();
    try {
      return make();
    } finally {
      this.#all = false;
      this.host.requestUpdate();
    }
  }

  #start(findings: Findings): void {
    this.#findings = findings;
    this.#chosen = null;
    this.#given = false;
    this.#painted = '';
    this.#listed = [];
    this.#page(0);
  }

  #diagram(findings: Findings): TemplateResult {
    const say = this.language.say(resultsWords);
    const frame = frameOf(findings, this.#shown, this.size);
    const { half, small } = frame;
    const toggle = (name: Drawn) => (event: Event): void => {
      event.stopPropagation();
      if (this.#shown.has(name)) this.#shown.delete(name);
      else this.#shown.add(name);
      this.host.requestUpdate();
    };
    // Outside of the plate, whose first drawing is measured.
    return html`<div class="segments">${DRAWN.map((name) => html`<label class="segment ${name}"><input type="checkbox" ?checked=${this.#shown.has(name)} @change=${toggle(name)} /><svg class="sign" viewBox="-10 -10 20 20" aria-hidden="true"><path part="centroid" d=${CENTROIDS[name]}></path></svg>${say(name)}</label>`)}</div>
      <figure class="plate" aria-label=${say('plot')}><span class="probe"></span>
      <div class="diagram">${findings.counted < PAINTED_FROM ? nothing : html`<canvas aria-hidden="true"></canvas>`}
        <svg role="img" font-size=${small} aria-label=${say('plotSpoken', { eyes: findings.counted })} viewBox="${-half} ${-half} ${2 * half} ${2 * half}" @click=${(event: MouseEvent) => this.#pick(event, findings)}>
          ${plot(findings, frame, this.#shown, this.#chosen, this.#all, (value) => withUnit(decimal(value, Number.isInteger(value) ? 0 : Number.isInteger(2 * value) ? 1 : 2, this.language.numbers), 'D', this.language.numbers))}
        </svg></div>
      <figcaption class="quiet">${say('ellipses')}</figcaption></figure>`;
  }

  #bars(findings: Findings): TemplateResult {
    const say = this.language.say(resultsWords);
    const lang = this.language.numbers;
    const font = 0.75 * this.size.font;
    const { height, drawing } = bars(findings, this.size.width, font, (value) => dioptres(value, lang));
    return html`<h3>${say('distribution')}</h3><div class="plate"><svg class="bars" role="group" font-size=${font} aria-label=${say('distributionSpoken', { step: dioptres(0.25, lang) })} viewBox="0 0 ${this.size.width} ${height}">${drawing}</svg></div>`;
  }

  /** The case that takes own figures, unless the table itself is in doubt: figures of meridians that are none must not get into a plan. */
  #taker({ own, problems }: Findings): CaseModel | null {
    if ((!own.incision && !own.arcs) || problems.some(({ id }) => id === 'likeReadings' || id === 'swappedColumns')) return null;
    return this.host.taker;
  }

  #own(findings: Findings): TemplateResult {
    const { own } = findings;
    const say = this.language.say(resultsWords);
    const told = (title: string, figure: string | null, { reason, notes }: OwnEvidence): TemplateResult => html`<p><strong>${figure === null ? say('noFigure', { name: title }) : say('figure', { name: title, figure })}</strong> ${saidText(reason, this.language)}</p>${notes.map((note) => html`<p class="quiet">${saidText(note, this.language)}</p>`)}`;
    return html`<h3>${say('own')}</h3>${told(say('ownIncision'), own.incision && dioptres(own.incision.flattening, this.language.numbers), own.evidence.incision)}${told(say('ownArcs'), own.arcs && percent(own.arcs.share, this.language.numbers), own.evidence.arcs)}
      ${own.incision === null && own.arcs === null ? nothing : html`<button part="button" type="button" class="give" aria-disabled=${this.#taker(findings) ? 'false' : 'true'} @click=${this.#give}>${say('give')}</button>`}
      <p role="status" class="given">${this.#given ? say('given') : ''}</p>
      <p class="quiet">${this.language.say(sharedWords)('estimate')}</p>`;
  }

  #list({ counted }: Findings): TemplateResult {
    const say = this.language.say(resultsWords);
    const step = (by: number) => (): void => this.#page(Math.max(0, Math.min(counted - 1, this.#from + by)));
    return html`<h3 id="list">${say('list')}</h3>
      <div role="listbox" tabindex="0" aria-labelledby="list" aria-activedescendant=${this.#chosen === null ? nothing : `eye-${this.#chosen}`} @keydown=${this.#onKey}>
        ${this.#listed.map((eye, index) => this.#row(eye, this.#from + index, counted))}</div>
      <p class="segments"><button part="button" type="button" class="previous" @click=${step(-PAGE)}>${say('previous')}</button><button part="button" type="button" class="next" @click=${step(PAGE)}>${say('next')}</button></p>`;
  }

  #row({ line, label, eye, before, after, induced }: Listed, index: number, counted: number): TemplateResult {
    const lang = this.language.numbers;
    const say = this.language.say(resultsWords);
    const text = say('row', {
      line, eye: this.language.say(sharedWords)(eyeId(eye)),
      before: astigmatismText(before, lang), after: astigmatismText(after, lang), induced: astigmatismText(induced, lang),
    });
    return html`<div role="option" id="eye-${index}" aria-setsize=${counted} aria-posinset=${index + 1} aria-selected=${index === this.#chosen ? 'true' : 'false'} @click=${() => this.#choose(index)}>${label ? say('both', { first: asGiven(label, this.language), second: text }) : text}</div>`;
  }

  readonly #onKey = (event: KeyboardEvent): void => {
    const last = this.#findings!.counted - 1;
    const at = this.#chosen ?? this.#from - 1;
    const goal = { ArrowDown: at + 1, ArrowUp: at - 1, PageDown: at + PAGE, PageUp: at - PAGE, Home: 0, End: last }[event.key];
    if (goal === undefined) return;
    event.preventDefault();
    this.#choose(Math.max(0, Math.min(last, goal)));
  };

  #pick(event: MouseEvent, findings: Findings): void {
    const { left, top, width, height } = (event.currentTarget as Element).getBoundingClientRect();
    const { half, scale } = frameOf(findings, this.#shown, this.size);
    const x = ((2 * (event.clientX - left)) / width - 1) * half;
    const y = ((2 * (event.clientY - top)) / height - 1) * half;
    const eye = nearestEye(DRAWN.filter((name) => this.#shown.has(name)).map((name) => findings.points[name]), x / scale, -y / scale, REACH / scale);
    if (eye !== null) this.#choose(eye);
  }

  #choose(index: number): void {
    this.#chosen = index;
    if (index < this.#from || index >= this.#from + PAGE) this.#page(index - (index % PAGE));
    this.host.requestUpdate();
  }

  /** Asks for the eyes of a page; the newest request wins, and one that was cancelled is not missed. */
  #page(from: number): void {
    this.#from = from;
    const findings = this.#findings;
    const asked = this.host.desk?.ask({ kind: 'list', from, count: PAGE }).then((reply) => {
      if (reply.kind !== 'list' || from !== this.#from || findings !== this.#findings) return;
      this.#listed = reply.listed;
      this.host.requestUpdate();
    });
    if (asked) this.host.waitFor(asked.catch(() => undefined));
  }

  readonly #give = (): void => {
    const taker = this.#taker(this.#findings!);
    this.#given = taker !== null && give(taker, this.#findings!.own, this.host);
    this.host.requestUpdate();
  };

  readonly #export = async (): Promise<void> => {
    // Ended by another table, whose own report follows.
    const reply = await this.host.desk?.ask({ kind: 'export', ...(this.language.lang !== 'en' && { words: exportWords(this.language) }) }).catch(() => undefined);
    if (reply?.kind !== 'export') return;
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([reply.text], { type: 'text/csv' }));
    link.download = 'outcomes.csv';
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 1000);
  };
}

/** Own figures into the case; whether it took them. */
function give(model: CaseModel, { incision, arcs }: OwnAdvice, from: AstigOutcomes): boolean {
  if (!incision && !arcs) return false;
  const ownFigures = { ...model.plan.ownFigures, ...(incision && { incision }), ...(arcs && { arcs }) };
  const flattening = incision ? { incisionFlattening: Math.round(100 * incision.flattening) / 100 } : {};
  return movesOf(model).choose({ ownFigures, ...flattening }, 'astig-outcomes give', from).length === 0;
}
