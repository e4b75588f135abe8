import { inflateSync } from 'node:zlib';

/**
 * How many sheets a PDF has. Newer files keep the descriptions of their pages in compressed streams.
 * @param {string} pdf in base64
 */
export function sheets(pdf) {
  const bytes = Buffer.from(pdf, 'base64');
  const text = bytes.toString('latin1');
  const streams = [...text.matchAll(/>>\s*stream\r?\n/g)].map(({ index, 0: { length } }) => inflated(bytes.subarray(index + length)));
  return [text, ...streams].join('\n').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
}

/** A stream as text, nothing when it is of another kind. What follows its end is not read. */
function inflated(bytes) {
  try {
    return inflateSync(bytes).toString('latin1');
  } catch {
    return '';
  }
}
