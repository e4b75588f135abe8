/**
 * The files that carry a library which no browser loads as it is (CommonJS inside): each is bundled with what it uses, so
 * that neither a test nor a page without a bundler has to. Paths from the root, without an ending.
 */
export const CARRIERS = ['core/algebra', 'core/outcomes-csv'];
