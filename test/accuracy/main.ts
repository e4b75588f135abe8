/** Bundled and run by `test/accuracy.mjs`. */
export { report } from './console.js';
export { withAccuracy } from './readme.js';
