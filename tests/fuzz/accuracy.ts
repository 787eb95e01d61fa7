import { InputError } from 'protolysis';
import { compareWithExact, davies, makeSolution, NotProvenError } from 'protolysis/exact';
import { randomFrom } from '../../src/measurement/statistics/random.js';
import type { Order, Report } from './order.js';
import { randomSystem } from './random-system.js';
import { shown } from './systems.js';
import type { Timed } from './timed.js';

/** What the package promises: `compareWithExact`, "A pH may be four limits off". */
const promised = 4;

/** Random systems against the exact entry, every fourth with activity coefficients: the worst error in units of conditioning. */
export function fuzzAccuracy({ exact, seed }: Order, timed: Timed, tell: (report: Report) => void): void {
  const random = randomFrom(seed);
  const counts = { compared: 0, refused: 0, unproven: 0 };
  let worst = { inLimits: 0, words: 'none' };
  tell({ kind: 'at', name: 'comparisons with the exact entry' });
  for (let k = 0; k < exact; k += 1) {
    const system = randomSystem(random);
    const real = k % 4 === 0;
    const conditions = { pKw: system.pKw, ...(real ? { activity: davies } : {}) };
    const words = `${real ? 'with activity, ' : ''}${shown(system)}`;
    try {
      const { inLimits } = timed.call(`comparison ${k}`, () =>
        compareWithExact(makeSolution({ mL: 20, contents: system.contents }), conditions),
      );
      counts.compared += 1;
      if (!(inLimits <= promised))
        tell({ kind: 'fault', words: `system ${k}: ${inLimits} limits off; ${words}` });
      if (inLimits > worst.inLimits) worst = { inLimits, words: `system ${k}` };
    } catch (error) {
      if (error instanceof InputError) counts.refused += 1;
      else if (error instanceof NotProvenError) counts.unproven += 1;
      else tell({ kind: 'fault', words: `system ${k}: ${error}; ${words}` });
    }
  }
  const { compared, refused, unproven } = counts;
  const kinds = `${compared} compared, ${refused} refused, ${unproven} not proven`;
  const error = `worst error ${worst.inLimits.toFixed(3)} of the conditioning limit (${worst.words})`;
  tell({ kind: 'count', words: `${exact} exact systems: ${kinds}; ${error}; ${timed}` });
}
