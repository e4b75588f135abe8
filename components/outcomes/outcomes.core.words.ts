import { COLUMN_TEXT, EXPORT_HEADINGS, OUTCOME_TEXT } from '../../core/outcomes.js';
import type { OutcomeColumn, OutcomeWording } from '../../core/outcomes.js';
import type { Words } from '../internal/language/language.js';

/** Sentences of the core. */
export const textWords: Words<OutcomeWording> = { part: 'outcomeTexts', en: OUTCOME_TEXT };

/** What a column holds. */
export const columnWords: Words<OutcomeColumn> = { part: 'outcomeColumns', en: COLUMN_TEXT };

/** Headings of what is added to a table that is saved. */
export const headingWords: Words<keyof typeof EXPORT_HEADINGS> = { part: 'outcomeHeadings', en: EXPORT_HEADINGS };
