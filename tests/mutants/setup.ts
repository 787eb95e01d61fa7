import fc from 'fast-check';

fc.configureGlobal({ seed: 20240917, numRuns: 25, interruptAfterTimeLimit: 300 });
