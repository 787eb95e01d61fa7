import { eitherStrong } from '../buffer/strong-search.js';
import { readGas } from '../equilibrium/conditions.js';
import type { Faults } from '../input/faults.js';
import { readSolutions } from '../solution/read-solution.js';
import type { Solution } from '../solution/solution.js';
import { readIndicator } from '../substance/read-indicator.js';
import { makeTitration } from '../titration/make-titration.js';
import { readSetup } from '../titration/read-setup.js';
import { usualLastVolume } from '../titration/sampling/usual-last-volume.js';
import { sessionDefaults } from './session-plan.js';

/** What a class does, as it has been read. */
export type ReadSession = ReturnType<typeof readSession>;

/** Reads what a class does from a caller's value, noting every fault. @internal */
export function readSession(value: unknown, faults: Faults) {
  const keys = ['groups', 'titrations', 'solutions', 'reserve', 'rinse'];
  const unread = faults.object(value, 'request', 'a request { groups, titrations, solutions }', keys);
  const list = (key: 'titrations' | 'solutions', what: string) =>
    unread[key] === undefined ? [] : faults.list(unread[key], key, what, 0, 100);
  const titrations = list('titrations', 'a list of { setup }').map((item, k) =>
    readTitration(item, `titrations[${k}]`, faults),
  );
  const others = list('solutions', 'a list of { solution, mL }').map((item, k) => {
    const path = `solutions[${k}]`;
    const part = faults.object(item, path, 'a solution of the session { solution, mL }', ['solution', 'mL']);
    return {
      value: part.solution,
      path: `${path}.solution`,
      mL: faults.number(part.mL, `${path}.mL`, 'a volume in mL', volume),
    };
  });
  // beside the setups, which have been read by now, so that one id means one substance in all of them
  const known = faults.any
    ? []
    : titrations.flatMap(({ setup, path }) => [
        { value: setup.analyte, path: `${path}.setup.analyte` },
        { value: setup.titrant, path: `${path}.setup.titrant` },
      ]);
  const read = readSolutions([...known, ...others, eitherStrong], faults).slice(known.length);
  if (!faults.any && titrations.length + others.length === 0)
    faults.add('missing', 'request', 'at least one titration or solution', undefined, 'without either');
  return {
    groups: faults.number(unread.groups, 'groups', 'a number of groups', {
      from: 1,
      to: 10_000,
      integer: true,
    }),
    titrations,
    others: others.map(({ mL }, k) => ({ solution: read[k] as Solution, mL })),
    reserve:
      unread.reserve === undefined
        ? sessionDefaults.reserve
        : faults.number(unread.reserve, 'reserve', 'a share', { from: 0, to: 10 }),
    rinse:
      unread.rinse === undefined
        ? sessionDefaults.rinse
        : faults.number(unread.rinse, 'rinse', 'a volume in mL', { from: 0, to: 1e4 }),
  };
}

const volume = { from: 0.01, to: 1e5 };

function readTitration(value: unknown, path: string, faults: Faults) {
  const unread = faults.object(value, path, 'a titration of the session { setup, upTo, runs, indicator }', [
    'setup',
    'upTo',
    'runs',
    'indicator',
  ]);
  const before = faults.count;
  const setup = readSetup(unread.setup, `${path}.setup`, faults);
  readGas([setup.analyte, setup.titrant], setup.inUse, `${path}.setup.conditions`, faults);
  const given =
    unread.upTo === undefined ? null : faults.number(unread.upTo, `${path}.upTo`, 'a volume in mL', volume);
  const runs =
    unread.runs === undefined
      ? 1
      : faults.number(unread.runs, `${path}.runs`, 'a number of runs', { from: 1, to: 1000, integer: true });
  const indicator =
    unread.indicator === undefined ? null : readIndicator(unread.indicator, `${path}.indicator`, faults);
  const usual = () =>
    Math.min(usualLastVolume(makeTitration(setup).equivalencePoints, setup.analyte), volume.to);
  return { path, setup, upTo: given ?? (faults.count > before ? 1 : usual()), runs, indicator };
}
