/** A text as it will be drawn: size in CSS px. */
export interface TextSize {
  width: number;
  height: number;
}

/** Line height of a label over its font size; enough for accents and descenders. */
const LINE = 1.2;

/** Widths of characters over the font size where nothing can be measured: on a server, and before the first layout. */
const ROUGH = { narrow: 0.28, other: 0.55 } as const;

const KNOWN_LIMIT = 2000;

const known = new Map<string, number>();
let context: CanvasRenderingContext2D | undefined;

/**
 * Size of one line of text. Measured once for each text and font; estimated as long as no family is known. Ahead of the
 * families stands the language of the text: by it Firefox picks the face of a generic family.
 */
export function textSize(text: string, fontSize: number, family: string, weight = 400): TextSize {
  if (!family) return { width: roughWidth(text) * fontSize, height: fontSize * LINE };
  const key = `${weight} ${fontSize} ${family} ${text}`;
  let width = known.get(key);
  if (width === undefined) {
    if (known.size > KNOWN_LIMIT) known.clear();
    width = measured(text, fontSize, family, weight);
    known.set(key, width);
  }
  return { width, height: fontSize * LINE };
}

function roughWidth(text: string): number {
  const others = text.replace(/[ijlrt.,' ]/g, '').length;
  return ROUGH.other * others + ROUGH.narrow * (text.length - others);
}

function measured(text: string, fontSize: number, family: string, weight: number): number {
  context ??= document.createElement('canvas').getContext('2d')!;
  const [language] = family.split(' ', 1);
  // Before the font. What does not know it picks the same face for every language.
  Object.assign(context, { lang: language });
  context.font = `${weight} ${fontSize}px ${family.slice(language!.length)}`;
  return context.measureText(text).width;
}
