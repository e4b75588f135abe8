import type { Catalogue } from '../catalogue.js';

/**
 * Languages that the library brings along, loaded when a page asks for them. English needs no catalogue. No clinician who
 * speaks the language has checked them yet.
 */
export const BUILT_IN: Record<string, () => Promise<{ catalogue: Catalogue }>> = {
  ar: () => import('./ar/index.js'),
  de: () => import('./de/index.js'),
  es: () => import('./es/index.js'),
  fr: () => import('./fr/index.js'),
  zh: () => import('./zh/index.js'),
};
