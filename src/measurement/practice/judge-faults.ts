import { alikeKinds } from './alike-kinds.js';
import { benchEffects } from './bench-effects.js';
import type { BenchFaultKind } from './bench-fault.js';
import type { Judged } from './judge-number.js';

/** The share of right names in all that are there or named: P. Jaccard, New Phytol. 11, 37–50 (1912). @internal */
export function judgeFaults(
  there: readonly BenchFaultKind[],
  named: readonly BenchFaultKind[] | null,
): Judged {
  if (named === null)
    return {
      share: 0,
      words: `Faults: no answer; there ${listOf(there) ? `is: ${listOf(there)}` : 'are none'}.`,
    };
  const counted = asNamed(there, named);
  const right = counted.filter((kind) => named.includes(kind));
  const missed = counted.filter((kind) => !named.includes(kind));
  const wrong = named.filter((kind) => !counted.includes(kind));
  const all = right.length + missed.length + wrong.length;
  const words = [
    ...(all === 0 ? ['none, and the run is sound'] : []),
    ...(right.length > 0 ? [`right: ${listOf(right)}`] : []),
    ...(missed.length > 0 ? [`missed: ${listOf(missed)}`] : []),
    ...(wrong.length > 0 ? [`not there: ${listOf(wrong)}`] : []),
  ];
  const either =
    counted === there
      ? ''
      : ' Readings alone hardly tell the concentration of the titrant from the amount of sample: either name counts.';
  return { share: all === 0 ? 1 : right.length / all, words: `Faults: ${words.join('; ')}.${either}` };
}

/** The faults that are there, under the name that the answer has for one of two that look alike. */
function asNamed(
  there: readonly BenchFaultKind[],
  named: readonly BenchFaultKind[],
): readonly BenchFaultKind[] {
  const [have, ...more] = alikeKinds.filter((kind) => there.includes(kind));
  const [say, ...others] = alikeKinds.filter((kind) => named.includes(kind));
  if (!have || !say || have === say || more.length > 0 || others.length > 0) return there;
  return there.map((kind) => (kind === have ? say : kind));
}

const listOf = (kinds: readonly BenchFaultKind[]): string =>
  kinds.map((kind) => benchEffects[kind].words).join(', ');
