export * from './indicators/azo-dyes.js';
export * from './indicators/mixed.js';
export * from './indicators/other-indicators.js';
export * from './indicators/phthaleins.js';
export * from './indicators/sulfonephthaleins.js';
