/** A text as it will be drawn: size in CSS px. */
export interface TextSize {
  width: number;
  height: number;
}

/** Line height of a label over its font size; enough for accents and descenders. */
const LINE = 1.2;

/** Mean width of a character over the font size, where nothing can be measured. */
const MEAN_CHARACTER = 0.58;

const KNOWN_LIMIT = 2000;

const known = new Map<string, number>();
let context: CanvasRenderingContext2D | null | undefined;

/** Size of one line of text. Measured once for each text and font; estimated where there is no canvas. */
export function textSize(text: string, fontSize: number, family: string, weight = 400): TextSize {
  const key = `${weight} ${fontSize} ${family} ${text}`;
  let width = known.get(key);
  if (width === undefined) {
    if (known.size > KNOWN_LIMIT) known.clear();
    width = measured(text, fontSize, family, weight);
    known.set(key, width);
  }
  return { width, height: fontSize * LINE };
}

function measured(text: string, fontSize: number, family: string, weight: number): number {
  if (context === undefined) context = typeof document === 'undefined' ? null : document.createElement('canvas').getContext('2d');
  if (!context) return text.length * fontSize * MEAN_CHARACTER;
  context.font = `${weight} ${fontSize}px ${family}`;
  return context.measureText(text).width;
}
