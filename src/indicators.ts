/**
 * The catalogue of indicators, one by one. A bundler keeps those that are imported; in the main entry they are the namespace
 * `indicators`.
 *
 * @packageDocumentation
 */
export * from './substance/indicators/azo-dyes.js';
export * from './substance/indicators/mixed.js';
export * from './substance/indicators/other-indicators.js';
export * from './substance/indicators/phthaleins.js';
export * from './substance/indicators/sulfonephthaleins.js';
