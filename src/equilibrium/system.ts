import { carbonic } from '../catalogue/acids/inorganic.js';
import type { Solution } from '../solution/solution.js';
import { type Totals, totalsOf } from '../solution/totals.js';
import { sum } from '../solver/sum.js';
import type { Protolyte } from '../substance/protolyte.js';
import { atZeroStrength, notesOnMedium } from './activity/at-zero-strength.js';
import { isIdealLaw } from './activity/laws.js';
import {
  type GasAtPressure,
  type IonColumn,
  makeRealSystem,
  type RealSystem,
} from './activity/real-system.js';
import { henryAt } from './carbon-dioxide.js';
import { type Balance, balanceOf } from './charge-balance.js';
import { type ConditionsInUse, notesOnConditions } from './conditions.js';
import { familyOf } from './family.js';
import { notesOnTemperature, stepAt } from './temperature/pka-at.js';

/** Several solutions that share one set of protolytes, ready for the charge balance. */
export interface System {
  readonly inUse: ConditionsInUse;
  /** Of fixed total: without a gas at fixed pressure. */
  readonly protolytes: readonly Protolyte[];
  readonly balance: Balance;
  /** The gas at fixed pressure, if there is one. */
  readonly gas: GasAtPressure | null;
  /** What of it leaves, if it can only leave. */
  readonly escape: Escape | null;
  readonly totals: readonly Totals[];
  /** One per solution, in mmol and mL. */
  readonly columns: readonly IonColumn[];
  /** What is uncertain about the constants and conditions. */
  readonly notes: readonly string[];
}

/** How carbon dioxide leaves: which family it is, and the system in which it has left as far as it can. */
interface Escape {
  readonly family: number;
  readonly share: number;
  readonly open: System;
}

/** Solutions under the conditions in use, as a system. @internal */
export function systemOf(solutions: readonly Solution[], inUse: ConditionsInUse): System {
  const totals = solutions.map(totalsOf);
  const present = new Map<string, Protolyte>();
  for (const { protolytes } of totals)
    for (const { protolyte } of protolytes)
      if (!present.has(protolyte.id)) present.set(protolyte.id, protolyte);

  const { celsius, carbonDioxide } = inUse;
  const dissolving = carbonDioxide && (carbonDioxide.protolyte ?? present.get(carbonic.id) ?? carbonic);
  const open = carbonDioxide?.escape === undefined ? dissolving : null;
  const protolytes = [...present.values()].filter(({ id }) => id !== open?.id);
  const families = protolytes.map((protolyte) => familyOf(movedTo(protolyte, inUse)));
  const pKH = carbonDioxide?.pKH ?? henryAt(celsius);
  const gas = open && { protolyte: open, dissolved: (carbonDioxide?.atm ?? 0) * 10 ** -pKH };
  const leaving = carbonDioxide?.escape !== undefined && present.get(dissolving?.id ?? '');
  return {
    inUse,
    protolytes,
    balance: balanceOf(
      10 ** -inUse.pKw,
      families,
      open ? levelsOf(movedTo(open, inUse), pKH, carbonDioxide?.atm ?? 0) : undefined,
    ),
    gas,
    escape: leaving
      ? {
          family: protolytes.indexOf(leaving),
          share: carbonDioxide?.escape ?? 0,
          open: systemOf(solutions, { ...inUse, carbonDioxide: withoutEscape(inUse) }),
        }
      : null,
    totals,
    columns: solutions.map(({ mL }, index) => columnOf(mL, totals[index] as Totals, protolytes)),
    notes: [
      ...protolytes.flatMap(({ notes = [] }) => notes),
      ...[...protolytes, ...(open ? [open] : [])].flatMap((protolyte) =>
        notesOnTemperature(protolyte, celsius),
      ),
      ...(isIdealLaw(inUse.activity) ? [] : notesOnMedium(protolytes, inUse.activity)),
      ...notesOnConditions(inUse),
    ],
  };
}

/** The amounts of a solution in the order of the protolytes. */
function columnOf(mL: number, totals: Totals, protolytes: readonly Protolyte[]): IonColumn {
  const mmol = new Map(totals.protolytes.map((entry) => [entry.protolyte.id, entry.mmol]));
  return {
    volume: mL,
    charge: totals.charge,
    amounts: Float64Array.from(protolytes, ({ id }) => mmol.get(id) ?? 0),
    squares: sum(totals.ions.map(({ ion, mmol: amount }) => ion.charge * ion.charge * amount)),
  };
}

/** The same gas, free to come and go. */
function withoutEscape({ carbonDioxide }: ConditionsInUse): ConditionsInUse['carbonDioxide'] {
  if (!carbonDioxide) return null;
  const { escape: _, ...rest } = carbonDioxide;
  return rest;
}

/**
 * The protolyte with the constants that hold at zero ionic strength (where γ is not 1 throughout) and at a temperature.
 */
function movedTo(protolyte: Protolyte, { activity, celsius }: ConditionsInUse): Protolyte {
  const { steps } = isIdealLaw(activity) ? protolyte : atZeroStrength(protolyte, activity);
  return { ...protolyte, steps: steps.map((step) => ({ ...step, pKa: stepAt(step, celsius) })) };
}

/** c₀·β_j for j = 1, 2, …, each rounded once. */
function levelsOf({ steps }: Protolyte, pKH: number, atm: number): Float64Array {
  let exponent = pKH;
  return Float64Array.from(steps, ({ pKa }) => {
    exponent += pKa;
    return atm * 10 ** -exponent;
  });
}

/** Whether γ = 1 throughout, so that the ideal charge balance is all there is. @internal */
export const isIdeal = ({ inUse }: System): boolean => isIdealLaw(inUse.activity);

/** The charge balance with constants that depend on ionic strength. @internal */
export function realSystemOf({ balance, protolytes, gas, totals, inUse }: System): RealSystem {
  const spectators = totals.flatMap(({ ions }) => ions.map(({ ion }) => ion));
  return makeRealSystem(balance, protolytes, gas, spectators, inUse);
}
