import { angle, decimal, withUnit } from '../internal/format.js';
import type { Language } from '../internal/language/language.js';
import { acuityText, usualNotation } from './sight.acuity.js';
import { notesWords } from './sight.notes.words.js';
import { SCENES, X_HEIGHTS, chartAcuities } from './sight.scenes.js';
import type { Settings } from './sight.settings.js';
import { shortNumber } from './sight.speech.js';

/** Length of an arm, mm: assumed. */
const ARM = 600;

/** What the notes are about. */
export interface NotesState {
  settings: Settings;
  /** Visual angle of the whole picture. */
  degrees: number;
  /** What is to be said of the page's own picture. */
  own: readonly string[];
  backSurface: boolean;
}

/** What the pictures stand for and what they leave out; what is shown and how large; a paragraph each. */
export function notes(state: NotesState, language: Language): string[] {
  const say = language.say(notesWords);
  const { settings, backSurface } = state;
  const eye = settings.glasses ? say('glassesMean') : say(settings.inFocus === 'least-blur' ? 'leastBlurMeans' : 'lineMeans');
  const scene = [sizeNote(state, language), sceneNote(settings, language)];
  return [
    [say('simulation'), eye, backSurface ? say('backSurface') : ''],
    [say('leftOut')],
    [...scene, ...state.own],
  ].map((sentences) => joined(sentences, language));
}

/** Sentences one after the other; Chinese has no space between them. */
function joined(sentences: readonly string[], { lang }: Language): string {
  return sentences.filter(Boolean).join(lang === 'zh' ? '' : ' ');
}

function sizeNote({ settings, degrees }: NotesState, language: Language): string {
  const say = language.say(notesWords);
  const { numbers } = language;
  const wide = angle(Math.round(degrees * 10) / 10, numbers);
  const seen = SCENES[settings.scene].distance ? say('seenFrom', { distance: metres(settings.distance, numbers), degrees: wide }) : say('seenAngle', { degrees: wide });
  const centimetres = (2 * ARM * Math.tan((degrees / 360) * Math.PI)) / 10;
  return joined([seen, say('lifeSize', { width: withUnit(decimal(centimetres, 0, numbers), 'cm', numbers) })], language);
}

function sceneNote(settings: Settings, language: Language): string {
  if (settings.scene === 'chart') return chartNote(settings, language);
  const say = language.say(notesWords);
  if (settings.scene === 'street') return say('lamps');
  if (settings.scene !== 'reading') return '';
  const heights = X_HEIGHTS.map((height) => withUnit(shortNumber(height, language.numbers), 'mm', language.numbers));
  return joined([say('nearFocus'), say('printSizes', { heights: heights.join(', ') })], language);
}

function chartNote({ distance, acuity }: Settings, language: Language): string {
  const notation = acuity ?? usualNotation(language.tag);
  const lines = chartAcuities(distance).map((value) => acuityText(-Math.log10(value), notation, language));
  return language.say(notesWords)('chartLines', { lines: lines.join(', ') });
}

function metres(value: number, numbers: string): string {
  return withUnit(shortNumber(value, numbers), 'm', numbers);
}
