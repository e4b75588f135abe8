import { SCENES, SIDE, X_HEIGHTS } from '../sight.scenes.js';
import { WHOLE } from './shapes.js';
import type { Drawing, TextLine } from './shapes.js';

/** Width of a text whose x is `xHeight` high, both in px. */
export type Measure = (text: string, xHeight: number) => number;

/** Around the text, and at least between paragraphs, px. */
const MARGIN = 26;
const LEAST_GAP = 8;

/** From line to line, in heights of the x. */
const LEADING = 2.6;

/** One paragraph a size, set as wide as the card; what is left of its height comes between them. */
export function reading(paragraphs: readonly string[], measure: Measure): Drawing {
  const blocks = paragraphs.map((paragraph, i) => {
    const xHeight = (X_HEIGHTS[i]! * SIDE) / SCENES.reading.width!;
    return { xHeight, texts: wrapped(paragraph, (part) => measure(part, xHeight) <= SIDE - 2 * MARGIN) };
  });
  const height = blocks.reduce((sum, { xHeight, texts }) => sum + texts.length * LEADING * xHeight, 0);
  const gap = Math.max(LEAST_GAP, (SIDE - MARGIN - height) / blocks.length);
  const lines: TextLine[] = [];
  let y = MARGIN / 2;
  for (const { xHeight, texts } of blocks) {
    for (const text of texts) {
      y += LEADING * xHeight;
      // The last tenths of a line are below the letters.
      lines.push({ text, x: MARGIN, y: y - 0.7 * xHeight, xHeight });
    }
    y += gap;
  }
  return { shapes: [{ path: WHOLE, paint: '#f6f6f6' }], lines };
}

function wrapped(text: string, fits: (part: string) => boolean): string[] {
  const lines: string[] = [];
  let line = '';
  for (const piece of pieces(text)) {
    if (line && !fits((line + piece).trimEnd())) {
      lines.push(line.trimEnd());
      line = '';
    }
    line += piece;
  }
  return [...lines, line.trimEnd()];
}

/** Where a line may break: after spaces, and after each sign of a script that has none; never before a full stop. */
function pieces(text: string): string[] {
  return text.match(/[\u3400-\u9fff][，。、；：！？]*|[^\s\u3400-\u9fff]+\s*|\s+/gu) ?? [];
}
