import fc from 'fast-check';

/** The same inputs for every mutant, and few of them: a property that needs thousands to notice a fault is too dull. */
fc.configureGlobal({ seed: 20240917, numRuns: 25, interruptAfterTimeLimit: 300, endOnFailure: true });
