import type { Catalogue } from './catalogue.js';

/**
 * Adds a language, or replaces single texts of one, English included: `addMessages('it', { summary: { step: 'Passo' } })`.
 * Texts are in MessageFormat 2. Elements that are on the page change as soon as the promise is fulfilled.
 */
export async function addMessages(lang: string, messages: Catalogue): Promise<void> {
  const catalogue = await import('./catalogue.js');
  catalogue.addMessages(lang, messages);
}
