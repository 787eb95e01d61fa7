/**
 * The catalogue of reagents, one by one. A bundler keeps those that are imported; in the main entry they are the namespace
 * `reagents`.
 *
 * @packageDocumentation
 */
export * from './substance/reagents/ammonium.js';
export * from './substance/reagents/borates.js';
export * from './substance/reagents/buffers.js';
export * from './substance/reagents/carbonates.js';
export * from './substance/reagents/carboxylic.js';
export * from './substance/reagents/phosphates.js';
export * from './substance/reagents/polycarboxylic.js';
export * from './substance/reagents/salts.js';
export * from './substance/reagents/strong-acids.js';
export * from './substance/reagents/strong-bases.js';
