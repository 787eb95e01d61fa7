import { capitalised } from '../capitalised.js';
import { chlorideOfHypochlorite, chlorine, chlorineHydrolysis, type Gas, gases } from '../catalogue/gases.js';
import type { IonColumn } from '../equilibrium/activity/real-system.js';
import { readConditions } from '../equilibrium/conditions.js';
import { equilibriumOf } from '../equilibrium/equilibrate.js';
import type { Equilibrium } from '../equilibrium/equilibrium.js';
import type { PH } from '../equilibrium/quantities.js';
import { systemOf } from '../equilibrium/system.js';
import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import { fixed } from '../print-number.js';
import { readSolution } from '../solution/read-solution.js';
import type { Solution } from '../solution/solution.js';
import type { Totals } from '../solution/totals.js';
import { sum } from '../solver/sum.js';
import type { Source } from '../source.js';

/** A gas that a solution sets free. */
export interface GasSetFree {
  readonly name: string;
  /** Of the solution. */
  readonly pH: PH;
  /** Its dissolved form, mol/L; null for chloramines, whose amount is not worked out. */
  readonly molar: number | null;
  /** Its pressure in air at rest over the solution, atm; null likewise. */
  readonly atm: number | null;
  /** The pressure from which a caution is given, atm; null likewise. */
  readonly fromAtm: number | null;
  /** What to say of it. */
  readonly caution: string;
  /** What it does and what to do, without numbers. */
  readonly advice: string;
  readonly sources: readonly Source[];
}

/**
 * The gases that a solution sets free, from its composition and pH: ammonia, hydrogen cyanide, hydrogen sulfide, sulfur
 * dioxide, nitrogen oxides, chlorine (from hypochlorite, with the chloride there is), chloramines and carbon dioxide.
 *
 *   p = c(dissolved form) / H,   c(Cl₂) = c(HClO)·c(H⁺)·c(Cl⁻) / K                                     (1)
 *
 * A gas is named where its pressure over the solution is above the limit of a workplace for 15 minutes, for carbon
 * dioxide above a tenth of an atmosphere. The solution counts as ideal, at 25 °C and closed to the air: orders of
 * magnitude decide. A protolyte is known by the labels of its forms, such as `HCN`; what has other labels, and any
 * other gas, is not found.
 *
 * @returns none where none is known; that is no proof of safety
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { gasesFrom, makeSolution, reagents } from 'protolysis';
 *
 * const { ammoniumChloride, sodiumHydroxide } = reagents;
 * const salt = { reagent: ammoniumChloride, molar: 0.1 };
 * gasesFrom(makeSolution({ contents: [salt] })); // => []
 * const [gas] = gasesFrom(makeSolution({ contents: [salt, { reagent: sodiumHydroxide, molar: 0.1 }] }));
 * gas?.name; // => 'ammonia'
 * gas?.atm; // => 0.00167
 * ```
 */
export function gasesFrom(solution: Solution): readonly GasSetFree[] {
  const faults = new Faults('gasesFrom');
  const read = readSolution(solution, 'solution', faults);
  faults.done();
  return frozen(gasesOf(read));
}

/** Of a solution that has been read. @internal */
export function gasesOf(solution: Solution): readonly GasSetFree[] {
  if (!solution.contents.some(({ mmol, reagent }) => mmol > 0 && reagent.protolytes.length > 0)) return [];
  const system = systemOf([solution], readConditions(undefined, 'conditions', new Faults('gasesFrom')));
  const { columns, totals } = system;
  const equilibrium = equilibriumOf(system, columns[0] as IonColumn, totals[0] as Totals, solution);
  const ofForms = gases.flatMap((gas) => setFree(gas, molarOfAny(equilibrium, gas.dissolved), equilibrium));
  return [...ofForms, ...fromHypochlorite(equilibrium)];
}

const hypochlorousForms = ['HClO', 'HOCl', 'HClO(aq)'];
const hypochloriteForms = ['ClO-', 'OCl-'];
const ammoniumForms = ['NH4+', 'NH3', 'NH3(aq)'];

/** Chlorine, and with ammonium chloramines. */
function fromHypochlorite(equilibrium: Equilibrium): GasSetFree[] {
  const acid = molarOfAny(equilibrium, hypochlorousForms);
  const all = acid + molarOfAny(equilibrium, hypochloriteForms);
  if (!(all > 0)) return [];
  const chloride = all + molarOfAny(equilibrium, ['Cl-']);
  const molar = Math.min(all, (acid * 10 ** -equilibrium.pcH * chloride) / chlorineHydrolysis.K);
  const found = setFree(chlorine, molar, equilibrium, [chlorineHydrolysis.source, chlorideOfHypochlorite]);
  return molarOfAny(equilibrium, ammoniumForms) > 0 ? [...found, chloraminesAt(equilibrium.pH)] : found;
}

const chloraminesAt = (pH: PH): GasSetFree => ({
  name: 'chloramines',
  pH,
  molar: null,
  atm: null,
  fromAtm: null,
  caution: 'Chloramines form from hypochlorite and ammonium at any pH. They are toxic: never mix the two.',
  advice: 'They are toxic: never mix hypochlorite and ammonium.',
  sources: [{ kind: 'commonPractice', note: 'bleach is never mixed with ammonia' }],
});

/** Of the forms of protolytes and ions with one of these labels, mol/L. */
const molarOfAny = ({ species }: Equilibrium, labels: readonly string[]): number =>
  sum(species.map(({ formula, molar }) => (labels.includes(formula) ? molar : 0)));

function setFree(gas: Gas, molar: number, { pH }: Equilibrium, more: readonly Source[] = []): GasSetFree[] {
  const { name, molarPerAtm, fromAtm, words, solubilitySource, limitSource } = gas;
  const atm = molar / molarPerAtm;
  if (!(atm > fromAtm)) return [];
  const subject = capitalised(name);
  const caution = `${subject} can escape at pH ${fixed(pH, 1)}: the air at rest over the solution would hold ${printPressure(atm)}, and this caution begins at ${printPressure(fromAtm)}. ${words}`;
  return [
    {
      name,
      pH,
      molar,
      atm,
      fromAtm,
      caution,
      advice: words,
      sources: [limitSource, solubilitySource, ...more],
    },
  ];
}

/** To one digit: the constants and the air over a beaker are known no better. */
const printPressure = (atm: number): string =>
  atm < 0.01 ? `${Number((1e6 * atm).toPrecision(1))} ppm` : `${Number(atm.toPrecision(1))} atm`;
