import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { Language } from '../internal/language/language.js';
import { FOCUSES } from './sight.optics.js';
import type { Focus } from './sight.optics.js';
import { SCENES, SCENE_NAMES } from './sight.scenes.js';
import type { SceneName } from './sight.scenes.js';
import { VIEWS } from './sight.settings.js';
import type { GivenSettings, NumberSetting, TakenSettings, WordSetting } from './sight.settings.js';
import { fieldHint, refusalWordsOf, shortNumber } from './sight.speech.js';
import { sightWords } from './sight.words.js';
import type { SightId } from './sight.words.js';

/** What the controls are drawn from. */
export interface FormState {
  given: GivenSettings;
  taken: TakenSettings;
  /** Whether the page has put in a picture of its own. */
  hasPicture: boolean;
  /** Texts that are being typed and not yet taken. */
  typed: ReadonlyMap<NumberSetting, string>;
  /** The small picture of a scene. */
  thumb(scene: SceneName): unknown;
  language: Language;
}

const FOCUS_TEXT: Record<Focus, SightId> = { 'least-blur': 'leastBlur', 'front-line': 'frontLine', 'back-line': 'backLine' };

/** Scene, view and glasses, always at hand. */
export function choices(form: FormState): TemplateResult {
  const { taken, hasPicture, thumb, language } = form;
  const say = language.say(sightWords);
  const { scene, view, glasses } = taken.settings;
  const scenes = SCENE_NAMES.filter((name) => name !== 'picture' || hasPicture || scene === 'picture');
  return html`${group('scene', say('sceneTitle'), scenes.map((name) => radio('scene', name, html`${thumb(name)}<span>${say(name)}</span>`, name === scene)))}
    <div class="pair-of-groups">
      ${group('view', say('viewTitle'), VIEWS.map((name) => radio('view', name, html`<span>${say(name)}</span>`, name === view)))}
      <label class="segment"><input type="checkbox" name="glasses" .checked=${live(glasses)} /><span>${say('glasses')}</span></label>
    </div>`;
}

/** Distance, pupil and focus, for who asks. */
export function details(form: FormState): TemplateResult {
  const { taken, language } = form;
  const say = language.say(sightWords);
  const { scene, inFocus } = taken.settings;
  const where = scene === 'picture' ? field('pictureAngle', form) : SCENES[scene].distance ? field('distance', form) : nothing;
  return html`<summary part="more">${say('more')}</summary>
    <div class="fields">${where} ${field('pupil', form, say('pupils'))}</div>
    ${group('inFocus', say('focusTitle'), FOCUSES.map((name) => radio('inFocus', name, html`<span>${say(FOCUS_TEXT[name])}</span>`, name === inFocus)))}`;
}

function group(name: WordSetting, label: string, content: unknown): TemplateResult {
  return html`<div class="choice ${name}" role="radiogroup" aria-labelledby="${name}-label">
    <p class="label" id="${name}-label">${label}</p>
    <div class="segments">${content}</div>
  </div>`;
}

function radio(name: WordSetting, value: string, content: TemplateResult, on: boolean): TemplateResult {
  return html`<label class="segment"><input type="radio" name=${name} .value=${value} .checked=${live(on)} />${content}</label>`;
}

/** A number with its label, unit, limits and, when it is wrong, what is wrong. */
function field(name: NumberSetting, { given, taken, typed, language }: FormState, aside = ''): TemplateResult {
  const refusal = taken.refusals.find(({ setting }) => setting === name);
  const value = given[name] ?? taken.settings[name];
  const text = typed.get(name) ?? (typeof value === 'number' ? shortNumber(value, language.numbers) : value);
  return html`<div class="field">
    <label for=${name}>${language.say(sightWords)(name)}</label>
    <input
      id=${name}
      name=${name}
      type="text"
      inputmode="decimal"
      autocomplete="off"
      spellcheck="false"
      dir="ltr"
      aria-describedby="${name}-note ${name}-aside"
      aria-invalid=${refusal ? 'true' : 'false'}
      .value=${live(text)}
    />
    <div>
      <p id="${name}-note" class=${refusal ? 'error' : 'allowed'} role=${refusal ? 'alert' : nothing}>
        ${refusal ? refusalWordsOf(refusal, language) : fieldHint(name, taken.settings, language)}
      </p>
      <p id="${name}-aside" class="allowed">${aside}</p>
    </div>
  </div>`;
}
