import type { Astigmatism } from '../../core/numbers.js';
import type { Picture } from '../../core/sight.js';
import { astigmatismText } from '../internal/format.js';
import { directionOf } from '../internal/language/direction.js';
import type { Language } from '../internal/language/language.js';
import { notesWords } from './sight.notes.words.js';
import { SIDES } from './sight.optics.js';
import type { Side } from './sight.optics.js';
import { SIDE } from './sight.scenes.js';
import { sightWords } from './sight.words.js';

const GAP = 24;
const LINE = 26;
const SIZE = 18;

/** Both pictures and what is said of them as one SVG file, with the pixels in it; before stands where reading begins. */
export function sheet(prints: Record<Side, Picture>, cornea: Record<Side, Astigmatism>, family: string, language: Language): string {
  const say = language.say(sightWords);
  const rightToLeft = directionOf(language.lang) === 'rtl';
  const places = rightToLeft ? [SIDE + 2 * GAP, GAP] : [GAP, SIDE + 2 * GAP];
  const under = GAP + prints.before.height;
  const [width, height] = [2 * SIDE + 3 * GAP, under + 4 * LINE + GAP];
  const write = (text: string, left: number, row: number, bold = ''): string => `<text x="${rightToLeft ? left + SIDE : left}" y="${under + row * LINE}"${bold}>${escaped(text)}</text>`;
  const halves = SIDES.map((side, i) => {
    const left = places[i]!;
    const { width: wide, height: high } = prints[side];
    const image = `<image x="${left}" y="${GAP}" width="${wide}" height="${high}" href="${address(prints[side])}"/>`;
    return image + write(say(side), left, 1, ' font-weight="600"') + write(`${say('astigmatism')} ${astigmatismText(cornea[side], language.numbers)}`, left, 2);
  });
  const root = `xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}"`;
  const type = `font-family="${escaped(family)}" font-size="${SIZE}" direction="${rightToLeft ? 'rtl' : 'ltr'}"`;
  return `<svg ${root} ${type}><rect width="100%" height="100%" fill="#fff"/>${halves.join('')}${write(language.say(notesWords)('simulation'), places[0]!, 4)}</svg>`;
}

function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);
}

function address({ data, width, height }: Picture): string {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  canvas.getContext('2d')!.putImageData(new ImageData(data as ImageDataArray, width, height), 0, 0);
  return canvas.toDataURL();
}
