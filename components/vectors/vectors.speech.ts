import { meridian } from '../../core/numbers.js';
import { astigmatismText, capital, dioptres, meridianText } from '../internal/format.js';
import type { Language } from '../internal/language/language.js';
import { sharedWords, stepId } from '../internal/words.js';
import type { Arrow } from './vectors.parts.js';
import { vectorsWords } from './vectors.words.js';

/** An arrow with what is said of it. */
export interface ToldArrow extends Arrow {
  name: string;
  /** Name and figures, as short as they can be without mixing up the steep and the flattened meridian. */
  figures: string;
  /** The same as a sentence. */
  sentence: string;
}

export function told(arrow: Arrow, arcCount: number, language: Language): ToldArrow {
  const { source, meaning } = arrow;
  const { numbers } = language;
  const say = language.say(vectorsWords);
  const own = source === 'before' || source === 'residual';
  const id = own ? source : stepId(source, arcCount);
  const suffix = capital(id) as Capitalize<typeof id>;
  const values = {
    astigmatism: astigmatismText(meaning, numbers),
    // A vector that makes a meridian flatter points to the one across it.
    meridian: meridianText(meridian(Math.round(meaning.meridian) + 90), numbers),
    power: dioptres(meaning.magnitude, numbers),
  };
  const name = own ? say(source) : language.say(sharedWords)(id as ReturnType<typeof stepId>);
  return { ...arrow, name, figures: say(`key${suffix}`, values), sentence: say(`said${suffix}`, values) };
}

/** The diagram in words, with the name of its eye. */
export function describeVectors(eye: string, arrows: readonly ToldArrow[], language: Language): string {
  const say = language.say(vectorsWords);
  const rest = arrows.length === 0 ? [say('nothing')] : [say('diagram'), ...arrows.map(({ sentence }) => sentence)];
  return [`${eye}.`, ...rest].join(' ');
}
