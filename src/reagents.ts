/**
 * The catalogue of reagents, one by one. A bundler keeps those that are imported; in the main entry they are the
 * namespace `reagents`.
 *
 * @packageDocumentation
 */
export * from './catalogue/reagents/ammonium.js';
export * from './catalogue/reagents/borates.js';
export * from './catalogue/reagents/buffers.js';
export * from './catalogue/reagents/carbonates.js';
export * from './catalogue/reagents/carboxylic.js';
export * from './catalogue/reagents/phosphates.js';
export * from './catalogue/reagents/polycarboxylic.js';
export * from './catalogue/reagents/salts.js';
export * from './catalogue/reagents/strong-acids.js';
export * from './catalogue/reagents/strong-bases.js';
