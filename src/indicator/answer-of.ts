import { Faults } from '../input/faults.js';

/** Calls a function of the caller's, and reads its answer. @internal */
export function answerOf<T>(
  path: string,
  ask: () => unknown,
  read: (answer: unknown, path: string, faults: Faults) => T,
): T {
  const faults = new Faults(path.replace(/\(.*/, ''));
  let answer: unknown;
  try {
    answer = ask();
  } catch (error) {
    if (error instanceof Error && error.name === 'InputError') throw error;
    const thrown = error instanceof Error ? error.message : error;
    faults.add('wrong-type', path, 'an answer instead of an error', thrown);
    faults.done();
  }
  const checked = read(answer, path, faults);
  faults.done();
  return checked;
}
