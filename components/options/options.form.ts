import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { meridian, site, temporalSite } from '../../core/numbers.js';
import type { CompletePlan, PlanLimits } from '../../core/numbers.js';
import { meridianText, siteText } from '../internal/format.js';
import { NOWHERE, SITE_NAMES, splitSites } from './options.limits.js';
import type { GivenLimits, LimitName, TakenLimits, TextLimit } from './options.limits.js';
import { FIELD, GROUP, LIMITS_TITLE, limitsText, offeredText, refusalText } from './options.words.js';

/** What the form is drawn from. */
export interface LimitsState {
  plan: CompletePlan;
  given: GivenLimits;
  taken: TakenLimits;
  /** What the search works with. */
  limits: PlanLimits;
  /** Texts that are being typed and not yet taken. */
  typed: ReadonlyMap<TextLimit, string>;
}

/** The surgeon's limits, closed to one line that says what they are. */
export function limitsForm(state: LimitsState): TemplateResult {
  const { given, limits, plan } = state;
  return html`<summary><span class="title">${LIMITS_TITLE}</span> <span class="offered">${offeredText(limits, plan)}</span></summary>
    <div class="form">
      ${group('sites', GROUP.sites, sites(state))} ${group('arcs', GROUP.arcs, switches('arcs', arcChoice(given), ARCS), noteOf('most-arcs', state))}
      ${group('lens', GROUP.lens, switches('lens', given.noLens ? 'no' : 'yes', LENS))}
      <div class="fields">
        ${textField('sites', splitSites(given.sites).others, state)} ${textField('widths', given.widths, state)}
        ${given.noLens ? nothing : textField('lenses', given.lenses, state)}
      </div>
    </div>`;
}

/** A switch of a row: its value and what the reader sees. */
type Option = readonly [value: string, text: string];

const ARCS: readonly Option[] = [
  ['0', 'None'],
  ['1', 'One'],
  ['2', 'Up to two'],
];

const LENS: readonly Option[] = [
  ['no', 'No'],
  ['yes', 'Yes'],
];

/** Which switch of the arcs is on; none while what the page has set is refused. */
export function arcChoice({ noArcs, mostArcs }: GivenLimits): string {
  return noArcs ? '0' : String(mostArcs ?? 2);
}

/** What was refused of a setting, in place of what may be set. */
function noteOf(name: LimitName, { taken }: LimitsState, usual = ''): { text: string; wrong: boolean } {
  const refusal = taken.refusals.find(({ field }) => (field as LimitName) === name);
  return { text: refusal ? refusalText(refusal) : usual, wrong: refusal !== undefined };
}

function group(name: string, label: string, content: unknown, note = { text: '', wrong: false }): TemplateResult {
  return html`<div class="choice ${name}" role=${name === 'sites' ? 'group' : 'radiogroup'} aria-labelledby="${name}-label">
    <p class="label" id="${name}-label">${label}</p>
    <div class="segments">${content}</div>
    ${note.wrong ? html`<p class="error">${note.text}</p>` : nothing}
  </div>`;
}

function switches(name: string, on: string, options: readonly Option[]): TemplateResult[] {
  return options.map(([value, text]) => html`<label class="segment"><input type="radio" name=${name} .value=${value} .checked=${live(value === on)} /><span>${text}</span></label>`);
}

function sites({ given, plan }: LimitsState): TemplateResult[] {
  const ticked = tickedSites(given.sites);
  return SITE_NAMES.map(
    (name) => html`<label class="segment"><input type="checkbox" name="site" .value=${name} .checked=${live(ticked.includes(name))} /><span>${siteLabel(name, plan)}</span></label>`,
  );
}

/** The places that are ticked; without a word all of them. */
function tickedSites(text: string): readonly string[] {
  const { names, others } = splitSites(text);
  return names.length === 0 && others === '' && !text?.includes(NOWHERE) ? SITE_NAMES : names;
}

/** The places as a text: nothing for the default, and what will be refused when there is none. */
export function sitesText(ticked: readonly string[], others: string): string {
  const text = [...ticked, others.trim()].filter(Boolean).join(' ');
  if (text === SITE_NAMES.join(' ')) return '';
  return text === '' ? NOWHERE : text;
}

function siteLabel(name: (typeof SITE_NAMES)[number], { eye, steepMeridian }: CompletePlan): string {
  if (name === 'temporal') return `Temporal, ${siteText(temporalSite(eye))}`;
  if (name === 'superior') return 'Superior, 90°';
  return `On the steep meridian, ${meridianText(meridian(steepMeridian))} or ${siteText(site(steepMeridian + 180))}`;
}

function textField(name: TextLimit, text: string, state: LimitsState): TemplateResult {
  const note = noteOf(name, state, limitsText(name));
  return html`<div class="field">
    <label for=${name}>${FIELD[name]}</label>
    <input
      id=${name}
      name=${name}
      type="text"
      autocomplete="off"
      spellcheck="false"
      aria-describedby="${name}-note"
      aria-invalid=${note.wrong ? 'true' : 'false'}
      .value=${live(state.typed.get(name) ?? text)}
    />
    <p id="${name}-note" class=${note.wrong ? 'error' : 'allowed'}>${note.text}</p>
  </div>`;
}
