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
export async function fuzzCalls(order: Order, timed: Timed, tell: (report: Report) => void): Promise<void> {
  const before = namesOnPrototypes();
  const counts = { answers: 0, refusals: 0 };
  const all: readonly PublicCall[] = [...mainCalls, ...exactCalls, ...measurementCalls];
  for (const { name, call, examples } of all) {
    tell({ kind: 'at', name });
    const attempt = async (values: Arguments, kind: string, k: number): Promise<void> => {
      const where = `${name}, ${kind} arguments ${k}`;
      try {
        const answer = await timed.promised(where, () => settled(() => call(...(values as never[]))));
        counts[answer === undefined ? 'refusals' : 'answers'] += 1;
        const bad = badNumberIn(answer);
        if (bad !== undefined)
          tell({ kind: 'fault', words: `${where}: ${bad} in the answer to ${shown(values)}` });
      } catch (error) {
        tell({ kind: 'fault', words: `${where}: ${error} from ${shown(values)}` });
      }
    };
    const sample = <T>(of: fc.Arbitrary<T>) => fc.sample(of, { numRuns: order.calls, seed: order.seed });
    for (const [k, make] of sample(hostileArguments).entries()) await attempt(make(), 'hostile', k);
    for (const [e, values] of examples.entries()) {
      for (const [k, bad] of sample(spoiled(values)).entries()) await attempt(bad, `spoiled ${e}`, k);
      for (const [k, far] of sample(extreme(values)).entries()) await attempt(far, `extreme ${e}`, k);
      await attempt(values.map(poisoned), `poisoned ${e}`, 0);
    }
  }
  const polluted = namesOnPrototypes() !== before || 'polluted' in {};
  if (polluted) tell({ kind: 'fault', words: 'a prototype has changed' });
  const { answers, refusals } = counts;
  tell({
    kind: 'count',
    words: `${all.length} functions: ${timed}; ${answers} answers, ${refusals} refusals`,
  });
}

/** An answer, at once or promised, or undefined where an InputError refuses it; an abort without a reason counts as that. */
async function settled(call: () => unknown): Promise<unknown> {
  const made = answerOrInputError(call);
  if (!(made instanceof Promise)) return made;
  return made.catch((error) => {
    if (error === undefined) return undefined;
    return answerOrInputError(() => {
      throw error;
    });
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
