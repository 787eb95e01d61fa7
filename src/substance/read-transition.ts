import type { Faults } from '../input/faults.js';
import { noteLength, readSource } from '../source.js';
import { indicatorLimits, type Transition } from './indicator.js';

/** Reads a pH of an indicator. @internal */
export function readPH(value: unknown, path: string, what: string, faults: Faults): number {
  const [from, to] = indicatorLimits.pH;
  return faults.number(value, path, what, { from, to });
}

/** Reads the range of pH over which an indicator changes. @internal */
export function readTransition(value: unknown, path: string, faults: Faults): Transition {
  const unread = faults.object(value, path, 'a transition { from, to }', ['from', 'to']);
  return readRange(unread, path, faults);
}

function readRange(unread: Readonly<Record<string, unknown>>, path: string, faults: Faults): Transition {
  const before = faults.count;
  const from = readPH(unread.from, `${path}.from`, 'a pH', faults);
  const to = readPH(unread.to, `${path}.to`, 'a pH', faults);
  if (faults.count === before && unread.from !== undefined && !(to - from >= narrowest))
    faults.add('conflict', `${path}.to`, `a pH at least ${narrowest} above \`from\``, to);
  return { from, to };
}

/** The narrowest transition, in units of pH. */
const narrowest = 0.001;

/** Reads the pH at which an indicator is called, within its transition. @internal */
export function readExponent(value: unknown, path: string, { from, to }: Transition, faults: Faults) {
  const unread = faults.object(value, path, 'a titration exponent { pH, source }', ['pH', 'source']);
  const inside = from < to ? { from, to } : {}; // else the transition is at fault
  return {
    pH: faults.number(unread.pH, `${path}.pH`, 'a pH inside the transition', inside),
    source: readSource(unread.source, `${path}.source`, faults),
  };
}

/** Reads what other works say of the transition and the pKIn. @internal */
export function readAlternatives(value: unknown, path: string, faults: Faults) {
  const unread = faults.object(value, path, 'alternatives { transitions, pKIns }', ['transitions', 'pKIns']);
  const list = (key: string, read: (item: unknown, here: string) => unknown) =>
    unread[key] === undefined
      ? {}
      : {
          [key]: faults
            .list(unread[key], `${path}.${key}`, 'a list', 0, 100)
            .map((item, k) => read(item, `${path}.${key}[${k}]`)),
        };
  return {
    ...list('transitions', (item, here) => {
      const one = faults.object(item, here, 'a transition { from, to, source }', ['from', 'to', 'source']);
      return { ...readRange(one, here, faults), source: readSource(one.source, `${here}.source`, faults) };
    }),
    ...list('pKIns', (item, here) => {
      const one = faults.object(item, here, 'a value { pKIn, source }', ['pKIn', 'source', 'note']);
      if (one.note !== undefined) faults.text(one.note, `${here}.note`, 'a note', noteLength);
      readPH(one.pKIn, `${here}.pKIn`, 'a pKIn', faults);
      return { ...one, source: readSource(one.source, `${here}.source`, faults) };
    }),
  };
}
