import fc from 'fast-check';

/**
 * Property tests draw the same inputs at every run, so that a change is judged by what it changes. `SEED=7 npm run unit` draws
 * others; so does `npm run fuzz`.
 */
fc.configureGlobal({ seed: Number(process.env.SEED ?? 20240917) });
