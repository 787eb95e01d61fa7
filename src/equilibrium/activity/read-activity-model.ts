import type { Faults } from '../../input/faults.js';
import type { Unread } from '../../input/safe-read.js';
import { readSource } from '../../source.js';
import { type ActivityModel, largestLog10Gamma } from './activity-model.js';
import { modelOf } from './debye-huckel-extended.js';
import { readActivityLaw } from './read-activity-law.js';

const keys = [
  'name',
  'log10Gamma',
  'dLog10Gamma',
  'd2Log10Gamma',
  'squareLaw',
  'upTo',
  'source',
  'law',
  'restsOn',
];

/**
 * Reads an activity model from a caller's value, and tries it once. A law as plain data is made anew from its data, so
 * a copy that came through JSON or from another copy of this package works too.
 *
 * @internal
 */
export function readActivityModel(
  value: unknown,
  path: string,
  celsius: number,
  faults: Faults,
): ActivityModel {
  const what = 'an activity model { name, log10Gamma, source }, such as davies';
  const before = faults.count;
  const unread = faults.object(value, path, what, keys);
  if (unread.law !== undefined) return readModelOfLaw(unread, path, celsius, faults);
  faults.text(unread.name, `${path}.name`, 'a name');
  const source = readSource(unread.source, `${path}.source`, faults);
  if (unread.squareLaw !== undefined && typeof unread.squareLaw !== 'boolean')
    faults.add('wrong-type', `${path}.squareLaw`, 'true or false', unread.squareLaw);
  if (unread.upTo !== undefined)
    faults.number(unread.upTo, `${path}.upTo`, 'an ionic strength in mol/L', { above: 0, to: 1e9 });
  for (const key of ['log10Gamma', 'dLog10Gamma', 'd2Log10Gamma'] as const) {
    const given = unread[key];
    if (given === undefined && key !== 'log10Gamma') continue;
    if (typeof given !== 'function')
      faults.add(given === undefined ? 'missing' : 'wrong-type', `${path}.${key}`, 'a function', given);
  }
  const restsOn = (
    unread.restsOn === undefined ? [] : faults.list(unread.restsOn, `${path}.restsOn`, 'a list of sources')
  ).map((one, k) => readSource(one, `${path}.restsOn[${k}]`, faults));
  if (faults.count > before) return nothingKnown;
  const model = { ...unread, source, restsOn } as unknown as ActivityModel;
  try {
    const limits = { from: -largestLog10Gamma, to: largestLog10Gamma };
    const [single] = [1, -1, 0].map((charge) =>
      faults.number(
        model.log10Gamma(charge, 0.1, celsius, 'H+'),
        `${path}.log10Gamma(${charge}, 0.1)`,
        'a log10 γ',
        limits,
      ),
    );
    if (model.squareLaw && faults.count === before)
      readSquareLaw(model, single as number, celsius, path, faults);
  } catch {
    faults.add('wrong-type', `${path}.log10Gamma`, 'a function that does not throw', model.log10Gamma);
  }
  return model;
}

/** The model of a law as plain data. Functions given beside it must agree with the law, unless it is faulty itself. */
function readModelOfLaw(unread: Unread, path: string, celsius: number, faults: Faults): ActivityModel {
  const before = faults.count;
  const model = modelOf(readActivityLaw(unread.law, `${path}.law`, faults));
  const { log10Gamma } = unread;
  if (faults.count > before || typeof log10Gamma !== 'function') return model;
  const differs = [1, -2].some((charge) => {
    try {
      return log10Gamma(charge, 0.1, celsius, 'H+') !== model.log10Gamma(charge, 0.1, celsius, 'H+');
    } catch {
      return true;
    }
  });
  if (differs)
    faults.add('conflict', `${path}.log10Gamma`, 'the function of the law, or no law beside it', log10Gamma);
  return model;
}

/** Notes a fault where a model says that log10 γ = z²·f(I), and it is not so. */
function readSquareLaw(
  model: ActivityModel,
  single: number,
  celsius: number,
  path: string,
  faults: Faults,
): void {
  for (const charge of [0, -1, 2]) {
    const [expected, own] = [charge * charge * single, model.log10Gamma(charge, 0.1, celsius, 'Na+')];
    if (!(Math.abs(own - expected) <= 1e-12 * Math.abs(expected)))
      faults.add(
        'conflict',
        `${path}.squareLaw`,
        `log10Gamma(${charge}, 0.1) of ${charge * charge} times log10Gamma(1, 0.1), ${expected}, for every ion`,
        own,
      );
  }
}

/** Stands in while faults are gathered. */
const nothingKnown: ActivityModel = {
  name: '?',
  log10Gamma: () => 0,
  source: { kind: 'commonPractice', note: '?' },
};
