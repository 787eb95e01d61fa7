import { expect, test } from 'vitest';
import { pHErrors } from './vectors.js';

/**
 * How far inside the allowance the answers are: the largest |pH − reference| over all equilibria of group A and all
 * points of group B, in units of the tolerance (vectors/README.md). `npm run unit -- tests/reference/margin` prints it.
 *
 * Half the allowance is asserted: a solver that needs more has lost digits that the input's conditioning did not take.
 */
test.each(['ideal.json', 'titrations.json'] as const)(
  '%s: the largest pH error is below half its tolerance',
  (file) => {
    const errors = pHErrors(file);
    const largest = errors.reduce((worst, one) => (one.ratio > worst.ratio ? one : worst));
    console.log(
      `${file}: ${errors.length} pH values, largest error ${largest.ratio.toFixed(2)} of the tolerance (${largest.id})`,
    );
    expect(largest.ratio).toBeLessThan(0.5);
  },
);
