import { NBSP, decimal, isolated } from '../internal/format.js';
import type { Language } from '../internal/language/language.js';
import type { OwnPicture } from './sight.own.js';
import { ownWords } from './sight.own.words.js';

/** What is to be said of a picture that can be used. */
export function ownNotes(own: OwnPicture, language: Language): string[] {
  const say = language.say(ownWords);
  if (own.state !== 'ready') return [];
  const { picture, size } = own;
  const smaller = picture.width < size.width || picture.height < size.height;
  return [smaller ? say('scaled', { pixels: pixels(picture, language), all: pixels(size, language) }) : '', say('private')];
}

/** Why there is no picture of the page's own; empty when there is one, or while it is on its way. */
export function ownProblem(own: OwnPicture, language: Language): string {
  const say = language.say(ownWords);
  if (own.state === 'huge') return say('huge', { pixels: pixels(own.size, language), most: decimal(own.most, 0, language.numbers) });
  return own.state === 'ready' || own.state === 'loading' ? '' : say(own.state);
}

function pixels({ width, height }: { width: number; height: number }, { numbers }: Language): string {
  return isolated(`${decimal(width, 0, numbers)}${NBSP}×${NBSP}${decimal(height, 0, numbers)}`, numbers);
}
