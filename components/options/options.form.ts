import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { meridian, site, temporalSite } from '../../core/numbers.js';
import { DEFAULT_SITES } from '../../core/options.js';
import type { CompletePlan } from '../../core/numbers.js';
import { checkedAs } from '../internal/checked.js';
import { controlStyles } from '../internal/control-styles.js';
import { meridianText, siteText } from '../internal/format.js';
import type { Language } from '../internal/language/language.js';
import { formStyles } from './options.form.styles.js';
import { formWords } from './options.form.words.js';
import { NOWHERE, splitSites } from './options.limits.js';
import type { GivenLimits, LimitName, TakenLimits, TextLimit } from './options.limits.js';
import { allowedText, limitRefusal, rangeValues } from './options.speech.js';
import { optionsWords } from './options.words.js';

/** What the form is drawn from. */
export interface FormState {
  plan: CompletePlan;
  taken: TakenLimits;
  language: Language;
}

/** Whose limits they are. */
export interface FormOwner extends GivenLimits {
  requestUpdate(): void;
}

type FormId = keyof typeof formWords.en;

/** A switch of a row: its value and what the reader sees. */
type Option = readonly [value: string, text: string];

const ARCS: readonly (readonly [string, FormId])[] = [
  ['0', 'none'],
  ['1', 'one'],
  ['2', 'upToTwo'],
];

const LENS: readonly (readonly [string, FormId])[] = [
  ['no', 'no'],
  ['yes', 'yes'],
];

const FIELD: Record<TextLimit, FormId> = { sites: 'otherSites', widths: 'widthsIn', lenses: 'lensesIn' };

const NOTE: Record<TextLimit, FormId> = { sites: 'sitesNote', widths: 'widthsNote', lenses: 'lensesNote' };

/** The form of the surgeon's limits: works on the properties of the element, which then reads them. */
export class LimitsForm {
  static readonly styles = [controlStyles, formStyles];

  /** Texts that are being typed and not yet taken. */
  readonly #typed = new Map<TextLimit, string>();

  constructor(private readonly owner: FormOwner) {}

  render(state: FormState): TemplateResult {
    const { owner } = this;
    const { language } = state;
    const say = language.say(formWords);
    const named = (options: readonly (readonly [string, FormId])[]): Option[] => options.map(([value, id]) => [value, say(id)]);
    return html`<div class="form" @input=${this.#onInput} @change=${this.#onChange} @keydown=${this.#onKeydown} @focusout=${this.#onFocusout}>
      ${choice('sites', language.say(optionsWords)('sites'), switches('checkbox', 'site', tickedSites(owner.sites), siteOptions(state)))}
      ${choice('arcs', say('relaxing'), switches('radio', 'arcs', [arcChoice(owner)], named(ARCS)), refusalOf('most-arcs', state))}
      ${choice('lens', say('toric'), switches('radio', 'lens', [owner.noLens ? 'no' : 'yes'], named(LENS)))}
      <div class="fields">
        ${this.#field('sites', splitSites(owner.sites).others, state)} ${this.#field('widths', owner.widths, state)}
        ${owner.noLens ? nothing : this.#field('lenses', owner.lenses, state)}
      </div>
    </div>`;
  }

  #field(name: TextLimit, text: string, state: FormState): TemplateResult {
    const { language } = state;
    const refused = refusalOf(name, state);
    const say = language.say(formWords);
    return html`<div class="field">
      <label for=${name}>${say(FIELD[name])}</label>
      <input
        id=${name}
        name=${name}
        type="text"
        autocomplete="off"
        spellcheck="false"
        aria-describedby="${name}-note"
        aria-invalid=${refused === null ? 'false' : 'true'}
        .value=${live(this.#typed.get(name) ?? text)}
      />
      <p id="${name}-note" class=${refused === null ? 'allowed' : 'error'}>
        ${refused ?? say(NOTE[name], { allowed: allowedText(name, language), ...rangeValues(name, language) })}
      </p>
    </div>`;
  }

  readonly #onInput = (event: Event): void => {
    // A native input event is composed and would reach the host page as if the element had a value.
    event.stopPropagation();
    const input = event.target as HTMLInputElement;
    if (isText(input)) this.#typed.set(input.name, input.value);
  };

  readonly #onChange = (event: Event): void => {
    event.stopPropagation();
    const { owner } = this;
    const input = event.target as HTMLInputElement;
    if (isText(input)) this.#take(input);
    else if (input.name === 'arcs') allowArcs(owner, Number(input.value) as 0 | 1 | 2);
    else if (input.name === 'lens') owner.noLens = input.value === 'no';
    else owner.sites = sitesText(input, splitSites(owner.sites).others);
  };

  /** Not every way out of a field makes it fire `change`. */
  readonly #onFocusout = (event: Event): void => {
    const input = event.target as HTMLInputElement;
    if (isText(input)) this.#take(input);
  };

  readonly #onKeydown = (event: KeyboardEvent): void => {
    const input = event.target as HTMLInputElement;
    if (!isText(input) || !this.#typed.has(input.name)) return;
    if (event.key === 'Escape') {
      this.#typed.delete(input.name);
      this.owner.requestUpdate();
      event.preventDefault();
      event.stopPropagation();
    } else if ((event.ctrlKey || event.metaKey) && /^[zy]$/i.test(event.key)) {
      // While a text is unfinished, the browser's own undo works on the text, not the case's on the plan.
      event.stopPropagation();
    }
  };

  /** A field is left or Enter was pressed: what was typed becomes the limit, or is refused. */
  #take(input: TextInput): void {
    const { name } = input;
    const text = this.#typed.get(name);
    if (text === undefined) return;
    this.#typed.delete(name);
    this.owner[name] = name === 'sites' ? sitesText(input, text) : text;
    this.owner.requestUpdate();
  }
}

type TextInput = HTMLInputElement & { name: TextLimit };

function isText(input: HTMLInputElement): input is TextInput {
  return input.type === 'text';
}

function allowArcs(owner: FormOwner, most: 0 | 1 | 2): void {
  owner.noArcs = most === 0;
  if (most > 0) owner.mostArcs = most;
}

/** Which switch of the arcs is on; none while what the page has set is refused. */
function arcChoice({ noArcs, mostArcs }: GivenLimits): string {
  return noArcs ? '0' : String(mostArcs ?? 2);
}

/** The places that are ticked; without a word all of them. */
function tickedSites(text: string): readonly string[] {
  const { names, others } = splitSites(text);
  return names.length === 0 && others === '' && !text?.includes(NOWHERE) ? DEFAULT_SITES : names;
}

/** The places as a text: nothing for the default, and what will be refused when there is none. */
function sitesText(input: HTMLElement, others: string): string {
  const ticked = input.closest('.form')!.querySelectorAll<HTMLInputElement>('[name=site]:checked');
  const text = [...[...ticked].map(({ value }) => value), others.trim()].filter(Boolean).join(' ');
  return text === DEFAULT_SITES.join(' ') ? '' : text || NOWHERE;
}

function siteOptions({ plan: { eye, steepMeridian }, language }: FormState): Option[] {
  const say = language.say(formWords);
  const { numbers } = language;
  return [
    ['temporal', say('temporal', { site: siteText(temporalSite(eye), numbers) })],
    ['superior', say('superior', { site: siteText(90, numbers) })],
    ['steep', say('onSteep', { meridian: meridianText(meridian(steepMeridian), numbers), opposite: siteText(site(steepMeridian + 180), numbers) })],
  ];
}

/** What was refused of a setting; null where nothing was. */
function refusalOf(name: LimitName, { taken, language }: FormState): string | null {
  const refusal = taken.refusals.find(({ field }) => field === name);
  return refusal ? limitRefusal(refusal, language) : null;
}

function choice(name: string, label: string, content: unknown, refusal: string | null = null): TemplateResult {
  return html`<div class="choice ${name}" role=${name === 'sites' ? 'group' : 'radiogroup'} aria-labelledby="${name}-label">
    <p class="label" id="${name}-label">${label}</p>
    <div class="segments">${content}</div>
    ${refusal === null ? nothing : html`<p class="error">${refusal}</p>`}
  </div>`;
}

function switches(type: 'radio' | 'checkbox', name: string, on: readonly string[], options: readonly Option[]): TemplateResult[] {
  return options.map(
    ([value, text]) => html`<label class="segment"><input type=${type} name=${name} .value=${value} ?checked=${on.includes(value)} ${checkedAs(on.includes(value))} /><span>${text}</span></label>`,
  );
}
