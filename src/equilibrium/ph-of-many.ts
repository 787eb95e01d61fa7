import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import { type Given, readConflicts } from '../solution/conflicting-constants.js';
import { readGiven } from '../solution/read-solution.js';
import { solutionLimits } from '../solution/solution.js';
import { numberAt } from '../solver/number-at.js';
import type { Reagent } from '../substance/reagent.js';
import type { IonColumn } from './activity/real-system.js';
import { afterEscape } from './carbon-dioxide-escape.js';
import { type Conditions, readConditions, readGas } from './conditions.js';
import { hydrogenIonSeriesOf, toPH, writeNextHydrogenIon } from './hydrogen-ion-series.js';
import { realSystemOrNull, solveSolution } from './solve-solution.js';
import { isIdeal, type System, systemOf } from './system.js';

/** Many solutions of one make-up: each reagent with its concentrations in them. */
export interface SolutionColumns {
  readonly contents: readonly {
    readonly reagent: Reagent;
    /** mol/L: one number per solution, or one number that holds for all. */
    readonly molar: ArrayLike<number> | number;
  }[];
}

/** At most as many solutions in one call. */
export const columnLimits = /*#__PURE__*/ frozen({ rows: 1e7 } as const);

/**
 * The pH of many solutions of one make-up: `pHOf` over columns, for sweeps and Monte Carlo.
 *
 * A pure function of plain data: reagents and typed arrays can be sent to a worker as they are, and any dataframe has
 * such columns. Each solution is solved from the one before, so that rows in an order in which neighbours are alike are
 * fastest; the order makes no difference to the result beyond rounding. A point of a titration is a row too: n/(V₀ +
 * V). With a model of activity, or with CO2 that escapes, each row is solved for itself, which is slower.
 *
 * @param solutions - columns of concentrations, all of one length
 * @returns one pH per row
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { pHsOf, reagents } from 'protolysis';
 *
 * const acid = { reagent: reagents.aceticAcid, molar: [0.1, 0.01, 0.001] };
 * const salt = { reagent: reagents.sodiumAcetate, molar: 0.01 };
 * const pHs = Array.from(pHsOf({ contents: [acid, salt] })); // => [3.76416, 4.75752, 5.75683]
 * ```
 */
export function pHsOf(solutions: SolutionColumns, conditions?: Conditions): Float64Array {
  const faults = new Faults('pHsOf');
  const inUse = readConditions(conditions, 'conditions', faults);
  const { contents, rows } = readColumns(solutions, faults);
  faults.done();

  // one mmol of each reagent in a mL: what a mol/L of it brings to a row
  const parts = contents.map(({ reagent }) => ({ mL: 1, contents: [{ reagent, mmol: 1 }] }));
  readGas(parts, inUse, 'conditions', faults);
  faults.done();
  const system = systemOf(parts, inUse);
  const out = new Float64Array(rows);
  if (isIdeal(system) && !system.escape) writeIdeal(system, contents, out);
  else writeReal(system, contents, out);
  return out;
}

/** Row after row from the root before. */
function writeIdeal({ balance, columns }: System, contents: readonly ReadColumn[], out: Float64Array): void {
  const brings = Float64Array.from(
    columns.flatMap(({ charge, amounts }) => [charge, ...Array.from(amounts)]),
  );
  const series = hydrogenIonSeriesOf(balance);
  const { totals } = series;
  totals[0] = 1;
  for (let row = 0; row < out.length; row += 1) {
    for (let i = 1; i < totals.length; i += 1) totals[i] = 0;
    for (let r = 0, at = 0; r < contents.length; r += 1) {
      const { molar, stride } = contents[r] as ReadColumn;
      const concentration = numberAt(molar, row * stride);
      for (let i = 1; i < totals.length; i += 1, at += 1)
        (totals[i] as number) += numberAt(brings, at) * concentration;
    }
    writeNextHydrogenIon(balance, series, out, row);
  }
  toPH(out, out.length);
}

/** Each row for itself, as in `pHOf`: with activity, or with CO2 that escapes, no row starts from the one before. */
function writeReal(system: System, contents: readonly ReadColumn[], out: Float64Array): void {
  const { columns, balance, escape: leaving } = system;
  const real = realSystemOrNull(system);
  const open = leaving && realSystemOrNull(leaving.open);
  for (let row = 0; row < out.length; row += 1) {
    const amounts = balance.families.map(() => 0);
    let [charge, squares] = [0, 0];
    for (const [r, { molar, stride }] of contents.entries()) {
      const brought = columns[r] as IonColumn;
      const concentration = numberAt(molar, row * stride);
      charge += brought.charge * concentration;
      squares += brought.squares * concentration;
      for (const i of amounts.keys()) (amounts[i] as number) += numberAt(brought.amounts, i) * concentration;
    }
    const column = afterEscape(system, { volume: 1, charge, squares, amounts }, open);
    out[row] = -Math.log10(solveSolution(system, column, real).activity);
  }
}

interface ReadColumn {
  readonly reagent: Reagent;
  readonly molar: ArrayLike<number>;
  /** 1, or 0 where one number holds for all rows. */
  readonly stride: 0 | 1;
}

function readColumns(value: unknown, faults: Faults): { contents: readonly ReadColumn[]; rows: number } {
  const unread = faults.object(value, 'solutions', 'solutions { contents }', ['contents']);
  const list = faults.list(unread.contents, 'contents', 'a list of { reagent, molar }', 1, 1000);
  const given: Given[] = [];
  const contents = list.map((item, index): ReadColumn => {
    const path = `contents[${index}]`;
    const part = faults.object(item, path, 'a part { reagent, molar }', ['reagent', 'molar']);
    const reagent = readGiven(part.reagent, `${path}.reagent`, given, faults);
    if (typeof part.molar === 'number')
      return { reagent, molar: [faults.number(part.molar, `${path}.molar`, what, molarLimits)], stride: 0 };
    return {
      reagent,
      molar: faults.numbers(part.molar, `${path}.molar`, what, molarLimits, columnLimits.rows),
      stride: 1,
    };
  });
  readConflicts(given, faults);
  if (faults.any) return { contents, rows: 0 };

  const lengths = new Set(contents.flatMap(({ molar, stride }) => (stride === 1 ? [molar.length] : [])));
  if (lengths.size !== 1)
    faults.add(
      lengths.size === 0 ? 'missing' : 'conflict',
      'contents',
      'columns of one length, at least one of them',
      contents,
      lengths.size === 0 ? 'without a column' : `columns of lengths ${[...lengths].join(', ')}`,
    );
  return { contents, rows: [...lengths][0] ?? 0 };
}

const what = 'a concentration in mol/L';
const molarLimits = { from: 0, to: solutionLimits.molar };
