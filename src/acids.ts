/**
 * The catalogue of acids, one by one. A bundler keeps those that are imported; in the main entry they are the namespace
 * `acids`.
 *
 * @packageDocumentation
 */
export * from './catalogue/acids/amines.js';
export * from './catalogue/acids/amino-acids.js';
export * from './catalogue/acids/buffers.js';
export * from './catalogue/acids/carboxylic.js';
export * from './catalogue/acids/inorganic.js';
export * from './catalogue/acids/other-organic.js';
export * from './catalogue/acids/polycarboxylic.js';
