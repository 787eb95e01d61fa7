import type { Faults } from '../../errors.js';
import { readSource, type Source } from '../../source.js';

/**
 * How the activity of an ion falls behind its concentration, a = γ·c.
 *
 * Bring your own as a plain object: `name`, `log10Gamma` and `source` are enough.
 *
 * @example
 * ```ts
 * import { type ActivityModel, davies, makeSolution, pHOf, reagents } from 'protolysis';
 *
 * const halfDavies: ActivityModel = {
 *   name: 'half of Davies',
 *   log10Gamma: (charge, ionicStrength, celsius) => davies.log10Gamma(charge, ionicStrength, celsius) / 2,
 *   source: { kind: 'commonPractice', note: 'an invented model, to show the shape' },
 * };
 * const acid = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
 * pHOf(acid, { activity: halfDavies }); // => 1.0535
 * ```
 */
export interface ActivityModel {
  readonly name: string;
  /** log10 γ of an ion of this charge at an ionic strength, mol/L, and a temperature, °C. */
  log10Gamma(charge: number, ionicStrength: number, celsius: number, formula?: string): number;
  /** Its derivative with respect to the ionic strength, L/mol; left out, it is taken numerically. */
  dLog10Gamma?(charge: number, ionicStrength: number, celsius: number, formula?: string): number;
  /** The second derivative, L²/mol²; only inflection points need it. Left out, it is taken numerically. */
  d2Log10Gamma?(charge: number, ionicStrength: number, celsius: number, formula?: string): number;
  /**
   * Whether log10 γ = z²·f(I) with one f for all ions, whose slope shrinks as I grows from zero (or has turned upward). Then one
   * evaluation serves all ions, and uniqueness of the ionic strength can be proved on the way: curves come faster.
   */
  readonly squareLaw?: boolean;
  /** The ionic strength, mol/L, up to which its authors recommend it; beyond, results carry a note. */
  readonly upTo?: number;
  readonly source: Source;
  /** Sources of what it takes from elsewhere, such as the permittivity of water. */
  readonly restsOn?: readonly Source[];
}

const keys = ['name', 'log10Gamma', 'dLog10Gamma', 'd2Log10Gamma', 'squareLaw', 'upTo', 'source', 'restsOn'];

/** Reads an activity model from a caller's value, and tries it once. @internal */
export function readActivityModel(
  value: unknown,
  path: string,
  celsius: number,
  faults: Faults,
): ActivityModel {
  const what = 'an activity model { name, log10Gamma, source }, such as davies';
  const before = faults.count;
  const unread = faults.object(value, path, what, keys);
  faults.text(unread.name, `${path}.name`, 'a name');
  const source = readSource(unread.source, `${path}.source`, faults);
  if (unread.squareLaw !== undefined && typeof unread.squareLaw !== 'boolean')
    faults.add('wrong-type', `${path}.squareLaw`, 'true or false', unread.squareLaw);
  if (unread.upTo !== undefined)
    faults.number(unread.upTo, `${path}.upTo`, 'an ionic strength in mol/L', { above: 0, to: 1e9 });
  for (const key of ['log10Gamma', 'dLog10Gamma', 'd2Log10Gamma'] as const) {
    const own = unread[key];
    if (own === undefined && key !== 'log10Gamma') continue;
    if (typeof own !== 'function')
      faults.add(own === undefined ? 'missing' : 'wrong-type', `${path}.${key}`, 'a function', own);
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

/** Beyond it products of coefficients leave the range of doubles. @internal */
export const largestLog10Gamma = 90;

/** Stands in while faults are gathered. */
const nothingKnown: ActivityModel = {
  name: '?',
  log10Gamma: () => 0,
  source: { kind: 'commonPractice', note: '?' },
};
