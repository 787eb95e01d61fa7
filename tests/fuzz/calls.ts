import fc from 'fast-check';
import { exactCalls } from '../exact/hostile-calls.js';
import { measurementCalls } from '../measurement/hostile-calls.js';
import { badNumberIn } from '../property/answers.js';
import { answerOrInputError, hostileArguments, spoiled } from '../property/hostile.js';
import { calls as mainCalls, type PublicCall } from '../property/hostile-calls.js';
import { extreme, poisoned } from './extreme.js';
import type { Order, Report } from './order.js';
import type { Timed } from './timed.js';

type Arguments = readonly unknown[];
const prototypes = [Object, Array, Function, String, Number, Map, Error, RegExp].map(
  ({ prototype }) => prototype,
);
const namesOnPrototypes = () => prototypes.map((one) => Reflect.ownKeys(one).length).join();

/** Every public function of every entry with hostile, spoiled, extreme and poisoned arguments. */
export function fuzzCalls(order: Order, timed: Timed, tell: (report: Report) => void): void {
  const before = namesOnPrototypes();
  const counts = { answers: 0, refusals: 0 };
  const all: readonly PublicCall[] = [...mainCalls, ...exactCalls, ...measurementCalls];
  for (const { name, call, examples } of all) {
    tell({ kind: 'at', name });
    const attempt = (values: Arguments, kind: string, k: number): void => {
      const where = `${name}, ${kind} arguments ${k}`;
      try {
        const answer = timed.call(where, () => answerOrInputError(() => call(...(values as never[]))));
        counts[answer === undefined ? 'refusals' : 'answers'] += 1;
        const bad = badNumberIn(answer);
        if (bad !== undefined)
          tell({ kind: 'fault', words: `${where}: ${bad} in the answer to ${shown(values)}` });
      } catch (error) {
        tell({ kind: 'fault', words: `${where}: ${error} from ${shown(values)}` });
      }
    };
    const sample = <T>(of: fc.Arbitrary<T>) => fc.sample(of, { numRuns: order.calls, seed: order.seed });
    sample(hostileArguments).forEach((make, k) => void attempt(make(), 'hostile', k));
    examples.forEach((values, e) => {
      sample(spoiled(values)).forEach((bad, k) => void attempt(bad, `spoiled ${e}`, k));
      sample(extreme(values)).forEach((far, k) => void attempt(far, `extreme ${e}`, k));
      attempt(values.map(poisoned), `poisoned ${e}`, 0);
    });
  }
  const polluted = namesOnPrototypes() !== before || 'polluted' in {};
  if (polluted) tell({ kind: 'fault', words: 'a prototype has changed' });
  const { answers, refusals } = counts;
  tell({
    kind: 'count',
    words: `${all.length} functions: ${timed}; ${answers} answers, ${refusals} refusals`,
  });
}

/** Arguments in a line; what cannot be printed is named by its kind. */
function shown(values: Arguments): string {
  try {
    return JSON.stringify(values, (_, value) => (typeof value === 'bigint' ? `${value}n` : value)).slice(
      0,
      600,
    );
  } catch {
    return 'arguments that cannot be printed; run again with the same seed';
  }
}
