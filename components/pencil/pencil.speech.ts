import { astigmatismText, decimal, dioptres, isolated, meridianText, withUnit } from '../internal/format.js';
import type { Language, Say } from '../internal/language/language.js';
import type { CompletePlan } from '../../core/numbers.js';
import { sharedWords } from '../internal/words.js';
import type { Place, Scene } from './pencil.scene.js';
import type { Settings } from './pencil.settings.js';
import { pencilWords } from './pencil.words.js';
import type { PencilId } from './pencil.words.js';

/** Differences below these count as none: of the axes of a patch, µm; of a place, mm. */
const ROUND = 1;
const THERE = 0.005;

type Words = Say<PencilId>;

export function micrometres(millimetre: number, { numbers }: Language): string {
  return withUnit(decimal(1000 * millimetre, 0, numbers), 'µm', numbers);
}

/** How far a plane is from the retina: in mm, and in dioptres. */
export function distances({ behind, excess }: Place, { numbers }: Language): [string, string] {
  return [withUnit(decimal(Math.abs(behind), 2, numbers), 'mm', numbers), dioptres(Math.abs(excess), numbers)];
}

/** Where a plane lies, in mm and dioptres from the retina. */
export function placeText(place: Place, language: Language): string {
  const say: Words = language.say(pencilWords);
  if (Math.abs(place.behind) < THERE) return say('onRetina');
  const [distance, power] = distances(place, language);
  return say('placed', { place: say(place.behind < 0 ? 'inFront' : 'behind', { distance }), power });
}

/** The patch on the screen: its size, and along which direction it is longer. */
export function patchText({ screen: { section } }: Scene, language: Language): string {
  const say: Words = language.say(pencilWords);
  const [longer, shorter] = [section.longer, section.shorter].map((mm) => 1000 * mm) as [number, number];
  if (longer < ROUND) return say('patchPoint');
  const values = { longer: micrometres(section.longer, language), shorter: micrometres(section.shorter, language), direction: along(section.direction, language) };
  return say(longer - shorter < ROUND ? 'patchRound' : shorter < ROUND ? 'patchLine' : 'patchLong', values);
}

export function along(direction: number, { numbers }: Language): string {
  return isolated(meridianText(Math.round(direction), numbers), numbers);
}

/** One sentence for each thing in the drawing, in the order of the light. */
export function keyTexts(scene: Scene, language: Language): Record<'front' | 'circle' | 'back' | 'point' | 'screen', string> {
  const say: Words = language.say(pencilWords);
  const focus = (id: 'keyFront' | 'keyBack', { direction, length, ...place }: Scene['front']): string =>
    say(id, { direction: along(direction, language), length: micrometres(length, language), place: placeText(place, language) });
  return {
    front: focus('keyFront', scene.front),
    back: focus('keyBack', scene.back),
    circle: say('keyCircle', { diameter: micrometres(scene.circle.diameter, language), place: placeText(scene.circle, language) }),
    point: say('keyPoint', { place: placeText(scene.circle, language) }),
    screen: say('keyScreen', { place: placeText(scene.screen, language), patch: patchText(scene, language) }),
  };
}

/** Which line is near, and why. */
export function whyText({ point, astigmatism, front, back }: Scene, language: Language): string {
  const say: Words = language.say(pencilWords);
  if (point) return say('whyNone');
  return say('whySteep', { steep: along(astigmatism.meridian, language), front: along(front.direction, language), back: along(back.direction, language) });
}

/** Names of what is drawn, as short as they can be. */
export function namesOf({ front, back }: Scene, language: Language): Record<string, string> {
  const say: Words = language.say(pencilWords);
  const focus = (id: 'front' | 'back', direction: number): string => `${say(id)} ${along(direction, language)}`;
  return { front: focus('front', front.direction), back: focus('back', back.direction), circle: say('circle'), retina: say('retina'), screen: say('screen'), point: say('point'), light: say('light') };
}

export function nameOf({ eye }: CompletePlan, { shows }: Settings, language: Language): string {
  return language.say(pencilWords)(shows === 'after' ? 'nameAfter' : 'nameBefore', { eye: language.say(sharedWords)(eye) });
}

/** The drawing in words. */
export function describe(plan: CompletePlan, settings: Settings, scene: Scene, language: Language): string {
  const key = keyTexts(scene, language);
  const things = scene.point ? [key.point] : [key.front, key.circle, key.back];
  return [nameOf(plan, settings, language), ...things, key.screen].map((text) => `${text}.`).join(' ').replaceAll('..', '.');
}

export function astigmatismLine({ astigmatism }: Scene, { numbers }: Language): string {
  return astigmatismText(astigmatism, numbers);
}

const FOCUS_TEXT: Record<Settings['inFocus'], PencilId> = { 'least-blur': 'leastBlur', 'front-line': 'frontLine', 'back-line': 'backLine' };

/** What lies on the retina, in the middle of a sentence. */
export function focusText({ inFocus }: Settings, language: Language): string {
  return language.say(pencilWords)(FOCUS_TEXT[inFocus]);
}
