import type { Picture } from '../../../core/sight.js';
import { directionOf } from '../../internal/language/direction.js';
import type { Language } from '../../internal/language/language.js';
import { SIDE } from '../sight.scenes.js';
import type { DrawnScene } from '../sight.scenes.js';
import { cardWords } from './card.words.js';
import { chart } from './chart.js';
import { paint, typeSize } from './paint.js';
import { reading } from './reading.js';
import { shelf } from './shelf.js';
import type { Drawing } from './shapes.js';
import { street } from './street.js';

/** For whom a scene is drawn: the reading card is in their language, and in the typeface of the page. */
export interface Reader {
  language: Language;
  family: string;
}

const drawings = new Map<string, Drawing>();
const pictures = new Map<string, Picture>();

/** The drawing of a scene, made once for each reader. */
export function drawingOf(scene: DrawnScene, reader: Reader): Drawing {
  return kept(drawings, keyOf(scene, reader), () => {
    if (scene === 'reading') return card(reader);
    return { chart, street, shelf }[scene]();
  });
}

/**
 * The pixels of a scene, made once for each reader.
 * @throws Error where the browser has no canvas to draw on.
 */
export function pictureOf(scene: DrawnScene, reader: Reader): Picture {
  return kept(pictures, keyOf(scene, reader), () => {
    const context = contextOf(SIDE, SIDE);
    paint(context, drawingOf(scene, reader), reader.family, directionOf(reader.language.lang) === 'rtl');
    return context.getImageData(0, 0, SIDE, SIDE) as Picture;
  });
}

function card({ language, family }: Reader): Drawing {
  const say = language.say(cardWords);
  const context = contextOf(1, 1);
  const measure = (text: string, xHeight: number): number => {
    context.font = `${typeSize(context, xHeight, family)}px ${family}`;
    return context.measureText(text).width;
  };
  return reading((['card1', 'card2', 'card3', 'card4', 'card5'] as const).map((id) => say(id)), measure);
}

/** Texts can arrive later than the first drawing, hence the first of them and not only the name of their language. */
function keyOf(scene: DrawnScene, { language, family }: Reader): string {
  return scene === 'reading' ? [scene, language.lang, language.say(cardWords)('card5'), family].join() : scene;
}

function kept<Value>(store: Map<string, Value>, key: string, make: () => Value): Value {
  let value = store.get(key);
  if (value === undefined) store.set(key, (value = make()));
  return value;
}

/** @throws Error where the browser has no canvas to draw on. */
export function contextOf(width: number, height: number): CanvasRenderingContext2D {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  // Its pixels are read once and never shown.
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (!context) throw new Error('There is no canvas to draw on.');
  return context;
}
