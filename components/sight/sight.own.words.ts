import type { Words } from '../internal/language/language.js';

/** Texts about the page's own picture. Catalogues hold them with the other texts. */
export const ownWords = {
  part: 'sight',
  en: {
    scaled: 'Calculated with {$pixels} of the {$all} pixels.',
    private: 'The picture stays on this page and is sent nowhere.',
    missing: 'The page has given no picture here.',
    broken: 'This picture cannot be read. It may be damaged, or of a kind that the browser does not know.',
    foreign: 'This picture comes from another site, so the browser does not let this page calculate with it. A copy on the site of this page will do.',
    huge: 'This picture is too large: {$pixels} pixels. At most {$most} can be used.',
  },
} as const satisfies Words;
