export * from './acids/amines.js';
export * from './acids/amino-acids.js';
export * from './acids/buffers.js';
export * from './acids/carboxylic.js';
export * from './acids/inorganic.js';
export * from './acids/other-organic.js';
export * from './acids/polycarboxylic.js';
