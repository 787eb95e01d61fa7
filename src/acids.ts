/**
 * The catalogue of acids, one by one. A bundler keeps those that are imported; in the main entry they are the namespace `acids`.
 *
 * @packageDocumentation
 */
export * from './substance/acids/amines.js';
export * from './substance/acids/amino-acids.js';
export * from './substance/acids/buffers.js';
export * from './substance/acids/carboxylic.js';
export * from './substance/acids/inorganic.js';
export * from './substance/acids/other-organic.js';
export * from './substance/acids/polycarboxylic.js';
