/**
 * The room that a line of text takes: in Latin letters from the top of an accent on a capital to the lowest stroke of a
 * small letter, whichever are in it; in others, and in figures, from its own highest to its own lowest stroke.
 * The box that a browser gives for a text is that of its font, which some fonts make half as high again as their
 * letters, and which Firefox widens by a pixel on each side for the smoothing of rims.
 */
export function inkBox(text: SVGTextElement): DOMRect {
  const { x, width } = text.getBBox();
  const { y } = text.getStartPositionOfChar(0);
  const { ascent, descent } = inkOf(getComputedStyle(text), text.textContent!);
  const matrix = text.getScreenCTM()!;
  const corners = [new DOMPoint(x, y - ascent), new DOMPoint(x + width, y + descent)].map((point) => point.matrixTransform(matrix));
  return new DOMRect(corners[0]!.x, corners[0]!.y, corners[1]!.x - corners[0]!.x, corners[1]!.y - corners[0]!.y);
}

const context = document.createElement('canvas').getContext('2d')!;

function inkOf({ fontWeight, fontSize, fontFamily }: CSSStyleDeclaration, text: string): { ascent: number; descent: number } {
  context.font = `${fontWeight} ${fontSize} ${fontFamily}`;
  const { actualBoundingBoxAscent, actualBoundingBoxDescent } = context.measureText(/\p{Script=Latin}/u.test(text) ? `${text}Ág` : text);
  return { ascent: actualBoundingBoxAscent, descent: actualBoundingBoxDescent };
}
