import type { Words } from '../language/catalogue.js';

/** Texts of the row under a drawing that gives it away as a picture. */
export const pictureWords = {
  part: 'picture',
  en: {
    copy: 'Copy as a picture',
    copied: 'Copied.',
    notCopied: 'This page or browser does not allow copying pictures.',
    save: 'Save as a picture, or drag it into a document',
  },
} as const satisfies Words;
