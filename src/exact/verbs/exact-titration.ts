import type { Decimal } from 'decimal.js';
import { readGas } from '../../equilibrium/conditions.js';
import { stepsInOrder } from '../../equilibrium/steps-in-order.js';
import { frozen } from '../../frozen.js';
import { Faults } from '../../input/faults.js';
import { once } from '../../once.js';
import { chargeOfState } from '../../titration/points/stoichiometric-volumes.js';
import { titrationLimits } from '../../titration/titration-limits.js';
import type { ColumnOf } from '../model/exact-charge-balance.js';
import { exactMixtureAt } from '../model/exact-column.js';
import {
  conditionKeys,
  type Digits,
  type ExactConditions,
  readDigits,
  readExactConditions,
  writtenConditions,
} from '../model/exact-conditions.js';
import { exactSlopeAt } from '../model/exact-slope.js';
import { checked, type ExactSolution, readExactSolution, written } from '../model/exact-solution.js';
import { type ExactSystem, exactSystemOf } from '../model/exact-system.js';
import { type ExactVolume, exactVolumeAt } from '../model/exact-volume.js';
import { provenBracketOf } from '../model/proven-bracket.js';
import { type Exactly, readExactly } from '../numbers/exactly.js';
import { compared, type Ratio, ratios, signOf, textOf } from '../numbers/ratio.js';
import { type ExactPH, exactPHOf } from './exact-ph.js';

/** What is titrated with what, to the last digit. */
export interface ExactTitrationSetup {
  /** In the beaker; its volume counts. */
  readonly analyte: ExactSolution;
  /** In the burette; its volume sets no limit. */
  readonly titrant: ExactSolution;
  readonly conditions?: ExactConditions;
}

/** An equivalence point: where the contents say so, with the pH and the slope there. */
export interface ExactEquivalencePoint extends ExactPH {
  /** Not rounded: a decimal text, or a fraction in lowest terms. */
  readonly mL: string;
  /** dpH/dV per mL. */
  readonly slope: Decimal;
}

/** A titration on decimals. Volumes are mL of titrant added in all. */
export interface ExactTitration {
  readonly setup: Required<ExactTitrationSetup>;
  /** pH after `mL` of titrant. */
  pHAt(mL: Exactly): ExactPH;
  /** dpH/dV after `mL` of titrant, per mL, dilution included; off by less than one unit of its last digit. */
  slopeAt(mL: Exactly): Decimal;
  /**
   * The volume at which the curve has this pH; null where it never has, from 0 to 1e9 mL. With a law of activity the
   * curve can have it more than once: then the volume is the first that `titrate` sees in doubles, and null where it
   * sees none.
   */
  volumeAt(pH: Exactly): ExactVolume | null;
  /** In order of volume. */
  readonly equivalencePoints: readonly ExactEquivalencePoint[];
}

/**
 * Sets up a titration on decimals: `titrate` to any number of digits.
 *
 * @param options - `digits` (of pH and volume after the point, of a slope in all), 50 by default and at most 500
 * @throws InputError that lists every fault, here and from each of the methods
 * @example
 * ```ts
 * import { reagents } from 'protolysis';
 * import { exactTitration, makeSolution } from 'protolysis/exact';
 *
 * const titration = exactTitration(
 *   {
 *     analyte: makeSolution({ mL: '20', contents: [{ reagent: reagents.sodiumCarbonate, molar: '0.05' }] }),
 *     titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: '0.1' }] }),
 *   },
 *   { digits: 20 },
 * );
 * titration.equivalencePoints.map(({ mL }) => mL); // => ['10', '20']
 * titration.pHAt('10').pH.toString(); // => '8.3385732011227157879'
 * ```
 */
export function exactTitration(setup: ExactTitrationSetup, options: Digits = {}): ExactTitration {
  const { analyte, titrant, conditions, digits } = readExactSetup(setup, options);
  const system = exactSystemOf([analyte, titrant], conditions);
  const points = once(() =>
    frozen(
      equivalenceVolumes(system).map((mL) => ({
        mL: textOf(mL),
        ...pHAt(system, mL, digits),
        slope: exactSlopeAt(system, mL, digits),
      })),
    ),
  );
  return Object.freeze<ExactTitration>({
    setup: frozen({
      analyte: written(analyte),
      titrant: written(titrant),
      conditions: writtenConditions(conditions),
    }),
    pHAt: (mL) => pHAt(system, read('pHAt', mL), digits),
    slopeAt: (mL) => exactSlopeAt(system, read('slopeAt', mL), digits),
    volumeAt: (pH) => exactVolumeAt(system, readPH(pH), digits),
    get equivalencePoints() {
      return points();
    },
  });
}

/** Reads the arguments of a call, and throws with every fault. */
function readExactSetup(setup: unknown, options: unknown) {
  const faults = new Faults('exactTitration');
  const unread = faults.object(setup, 'setup', 'a setup { analyte, titrant }', [
    'analyte',
    'titrant',
    'conditions',
  ]);
  const analyte = readExactSolution(unread.analyte, 'analyte', faults, true);
  const titrant = readExactSolution(unread.titrant, 'titrant', faults);
  const given =
    unread.conditions === undefined
      ? {}
      : faults.object(
          unread.conditions,
          'conditions',
          `conditions { ${conditionKeys.join(', ')} }`,
          conditionKeys,
        );
  const conditions = readExactConditions(given, 'conditions', faults);
  const digits = readDigits(
    faults.object(options, 'options', 'options { digits }', ['digits']).digits,
    faults,
  );
  checked(
    { mL: analyte.mL, contents: [...analyte.contents, ...titrant.contents].map(none) },
    'titrant',
    faults,
  );
  faults.done();
  readGas([analyte, titrant], conditions.inUse, 'conditions', faults);
  faults.done();
  return { analyte, titrant, conditions, digits };
}

/** The contents without their amounts, to see whether they can be together. */
const none = ({ reagent }: { readonly reagent: ExactSolution['contents'][number]['reagent'] }) => ({
  reagent,
  mmol: ratios.of(0),
});

function read(call: string, mL: unknown): Ratio {
  const faults = new Faults(call);
  const volume = readExactly(mL, 'mL', 'a volume in mL', { from: 0, to: titrationLimits.mL }, faults);
  faults.done();
  return volume;
}

function readPH(pH: unknown): Ratio {
  const faults = new Faults('volumeAt');
  const value = readExactly(pH, 'pH', 'a pH', { from: -5, to: 25 }, faults);
  faults.done();
  return value;
}

function pHAt(system: ExactSystem, mL: Ratio, digits: number): ExactPH {
  const mixture = exactMixtureAt(system.columns, mL);
  return exactPHOf(system, mixture, provenBracketOf(system, mixture, digits), digits);
}

/**
 * The volumes above zero at which a whole state is neutral (titration/points/stoichiometric-volumes.ts); states that
 * tie are one point.
 */
function equivalenceVolumes({ columns, inDoubles }: ExactSystem): Ratio[] {
  const [analyte, titrant] = columns as [ColumnOf<Ratio>, ColumnOf<Ratio>];
  const isPresent = ({ family }: { family: number }) =>
    [analyte, titrant].some(({ amounts }) => signOf(amounts[family] as Ratio) > 0);
  const { families } = inDoubles.balance;
  const order = stepsInOrder(families.map(({ constants }) => constants)).filter(isPresent);

  const volumes = Array.from({ length: order.length + 1 }, (_, state) => {
    const done = order.slice(0, state);
    const ofTitrant = ratios.over(chargeOfState(ratios, titrant, families, done), titrant.volume);
    if (signOf(ofTitrant) === 0) return [];
    return [
      ratios.over(chargeOfState(ratios, analyte, families, done), ratios.minus(ratios.of(0), ofTitrant)),
    ];
  }).flat();
  const most = ratios.of(titrationLimits.mL);
  return volumes
    .filter((mL) => signOf(mL) > 0 && compared(mL, most) <= 0)
    .sort(compared)
    .filter((mL, k, all) => k === 0 || compared(mL, all[k - 1] as Ratio) > 0);
}
