export * from './numbers.js';
export * from './options.js';
export { CONSTANTS } from './constants.js';
export * from './cyclotorsion-constants.js';
export * from './figures.js';
export * from './references.js';
export * from './sight-model.js';
export * from './sight.js';
