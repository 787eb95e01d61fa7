/**
 * The catalogue of indicators, one by one. A bundler keeps those that are imported; in the main entry they are the
 * namespace `indicators`.
 *
 * @packageDocumentation
 */
export * from './catalogue/indicators/azo-dyes.js';
export * from './catalogue/indicators/mixed.js';
export * from './catalogue/indicators/other-indicators.js';
export * from './catalogue/indicators/phthaleins.js';
export * from './catalogue/indicators/sulfonephthaleins.js';
