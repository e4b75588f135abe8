import type { Astigmatism, Limits } from '../../core/numbers.js';
import { expectedAcuity } from '../../core/sight-acuity.js';
import { decimal, dioptres, isolated, withUnit } from '../internal/format.js';
import type { Language } from '../internal/language/language.js';
import { sharedWords } from '../internal/words.js';
import { acuityText, usualNotation } from './sight.acuity.js';
import { blurMinutes } from './sight.optics.js';
import { SCENES } from './sight.scenes.js';
import type { SceneName } from './sight.scenes.js';
import { limitsOf } from './sight.settings.js';
import type { NumberSetting, Refusal, SettingName, Settings } from './sight.settings.js';
import { sightWords } from './sight.words.js';
import type { SightId } from './sight.words.js';

/** From which width of the blur on, in minutes of arc, a picture is called so; the finest stroke of 6/6 is one. Assumed. */
const BLURRED: readonly (readonly [minutes: number, text: SightId])[] = [
  [8, 'strong'],
  [3, 'clear'],
  [0.7, 'slight'],
  [0, 'sharp'],
];

const SCENE_TEXT: Record<SceneName, SightId> = { chart: 'chartWords', reading: 'readingWords', street: 'streetWords', shelf: 'shelfWords', picture: 'pictureWords' };

const SETTING_TEXT: Record<SettingName, SightId> = {
  scene: 'sceneTitle',
  view: 'viewTitle',
  inFocus: 'focusTitle',
  acuity: 'acuityTitle',
  distance: 'distance',
  pupil: 'pupil',
  pictureAngle: 'pictureAngle',
};

/** What an eye may read, as an estimate with its spread; empty while a focal line is in focus, for the study asked no such eyes. */
export function acuityWords({ magnitude }: Astigmatism, { inFocus, acuity, glasses }: Settings, language: Language): string {
  if (inFocus !== 'least-blur' && !glasses) return '';
  const say = language.say(sightWords);
  const notation = acuity ?? usualNotation(language.tag);
  const { logMAR, low, high, beyondData } = expectedAcuity(glasses ? 0 : magnitude);
  const write = (value: number): string => acuityText(value, notation, language);
  if (beyondData) return say('acuityBeyond', { middle: write(logMAR) });
  return say(glasses ? 'acuityGlasses' : 'acuity', { middle: write(logMAR), better: write(low), worse: write(high) });
}

/** What a picture shows, for who cannot see it. */
export function pictureWords(side: string, eye: Astigmatism, settings: Settings, name: string, language: Language): string {
  const say = language.say(sightWords);
  const minutes = settings.glasses ? 0 : blurMinutes(eye.magnitude, settings.pupil, settings.inFocus);
  const blur = BLURRED.find(([least]) => minutes >= least)![1];
  const estimate = acuityWords(eye, settings, language);
  const amount = dioptres(eye.magnitude, language.numbers);
  return say('described', { side, amount, scene: sceneWords(settings.scene, name, language), blur: say(blur), acuity: estimate && `${estimate}.` }).trim();
}

/** What a scene shows. `name` is what the page says of its own picture. */
export function sceneWords(scene: SceneName, name: string, language: Language): string {
  const say = language.say(sightWords);
  return name && scene === 'picture' ? say('pictureNamed', { name }) : say(SCENE_TEXT[scene]);
}

/** A refusal with the setting called by its label. */
export function refusalWordsOf({ setting, value, accepted }: Refusal, language: Language): string {
  const say = language.say(sightWords);
  const limits = isRange(accepted) ? rangeText(accepted, language) : isolated(accepted.join(', '), language.numbers);
  return say('refusal', { setting: say(SETTING_TEXT[setting]), value: shownValue(value, language), accepted: limits });
}

function isRange(accepted: Refusal['accepted']): accepted is Limits {
  return 'min' in accepted;
}

/** What may be typed into a field. */
export function fieldHint(setting: NumberSetting, { scene }: Settings, language: Language): string {
  const usual = { pupil: SCENES[scene].pupil, distance: SCENES[scene].distance?.usual, pictureAngle: SCENES.picture.degrees }[setting]!;
  const limits = limitsOf(setting, scene);
  return language.say(sightWords)('usual', { range: rangeText(limits, language), usual: withUnit(shortNumber(usual, language.numbers), limits.unit, language.numbers) });
}

function rangeText({ min, max, unit }: Limits, language: Language): string {
  const { numbers } = language;
  return language.say(sightWords)('range', { min: shortNumber(min, numbers), max: withUnit(shortNumber(max, numbers), unit, numbers) });
}

function shownValue(value: unknown, language: Language): string {
  if (typeof value === 'number') return isolated(shortNumber(value, language.numbers), language.numbers);
  return language.say(sharedWords)('quoted', { text: isolated(String(value).slice(0, 40), language.numbers) });
}

/** With as many decimals as it has, two at most. */
export function shortNumber(value: number, numbers: string): string {
  const digits = [0, 1].find((count) => Math.abs(value * 10 ** count - Math.round(value * 10 ** count)) < 1e-9) ?? 2;
  return decimal(value, digits, numbers).replace('-', '−');
}
