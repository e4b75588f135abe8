import type { Words } from '../internal/language/language.js';

export const outcomesWords = {
  part: 'outcomes',
  en: {
    name: 'Own results',
    choose: 'Choose a table',
    drop: 'or drop a file with delimited text here. It stays in this page: nothing is stored or sent, and no names are needed.',
    paste: 'Paste a table',
    pasted: 'Read what was pasted',
    reading: 'Reading the table',
    cancel: 'Cancel',
    failed: 'The table could not be read: {$reason}',
    cancelled: 'Reading was cancelled.',
    done: 'Eyes counted: {$counted} of {$rows}.',
  },
} as const satisfies Words;
