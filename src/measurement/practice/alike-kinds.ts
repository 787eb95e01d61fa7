import type { BenchFaultKind } from './bench-fault.js';

/**
 * Kinds that readings alone hardly tell apart: a stronger titrant and a smaller sample move a curve alike, but for a change
 * of pH that any probe may be off by.
 *
 * @internal
 */
export const alikeKinds: readonly BenchFaultKind[] = ['sampleAmount', 'titrantConcentration'];
