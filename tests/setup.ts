import fc from 'fast-check';

/**
 * Property tests draw new inputs at every run at a desk, where a failing seed can be looked into, and the same ones in CI, where
 * a change is to be judged by what it changes.
 */
if (process.env.CI) fc.configureGlobal({ seed: 20240917 });
