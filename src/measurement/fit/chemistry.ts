import type { IonColumn } from '../../equilibrium/activity/real-system.js';
import { type Balance, balanceOf } from '../../equilibrium/charge-balance.js';
import type { Family } from '../../equilibrium/family.js';
import { type System, systemOf } from '../../equilibrium/system.js';
import { numberAt } from '../../solver/number-at.js';
import { mixtureModelOf } from '../../titration/model/mixture-model.js';
import type { ReadSetup } from '../../titration/read-setup.js';
import type { FitParameter } from './parameter-moves.js';

/** A direction in which a parameter moves the contents: of the flask, or of each mL of titrant. @internal */
interface ContentsMove {
  readonly what: 'flask' | 'titrant';
  readonly column: IonColumn;
}

/** A constant that a parameter moves. @internal */
interface ConstantMove {
  readonly what: 'pKa';
  readonly family: number;
  readonly step: number;
}

/** A titration as numbers, and how each parameter moves them. @internal */
export interface Chemistry {
  readonly system: System;
  readonly flask: IonColumn;
  /** Of one mL. */
  readonly titrant: IonColumn;
  readonly parameters: readonly FitParameter[];
  /** Of each parameter; null where it is one of the bench. */
  readonly moves: readonly (ContentsMove | ConstantMove | null)[];
}

/** A set-up as numbers, with the direction of each parameter as a column more. @internal */
export function chemistryOf(
  { analyte, titrant, inUse }: ReadSetup,
  parameters: readonly FitParameter[],
): Chemistry {
  const directions = parameters.map(({ moves }) => ('contents' in moves ? moves.contents : []));
  const solutions = [analyte, titrant, ...directions.map((contents) => ({ mL: 1, contents }))];
  const system = systemOf(solutions, inUse);
  const mixture = mixtureModelOf(system);
  return {
    system,
    flask: mixture.analyte,
    titrant: mixture.titrant,
    parameters,
    moves: parameters.map(({ moves }, j) => {
      if (moves.what === 'flask' || moves.what === 'titrant')
        return { what: moves.what, column: { ...(system.columns[j + 2] as IonColumn), volume: 0 } };
      if (moves.what !== 'pKa') return null;
      const family = system.protolytes.findIndex(({ id }) => id === moves.protolyte);
      return { what: 'pKa', family, step: moves.step };
    }),
  };
}

/** The chemistry at some values of the parameters. @internal */
export interface ChemistryAt {
  readonly balance: Balance;
  readonly flask: IonColumn;
  readonly titrant: IonColumn;
}

/** Contents are linear in the parameters; a constant is taken as given. @internal */
export function chemistryAt(chemistry: Chemistry, values: ArrayLike<number>): ChemistryAt {
  const { system, parameters, moves } = chemistry;
  let { flask, titrant } = chemistry;
  let families: readonly Family[] = system.balance.families;
  for (const [j, move] of moves.entries()) {
    const value = numberAt(values, j);
    const change = value - (parameters[j]?.start ?? 0);
    if (move === null || change === 0) continue;
    if (move.what === 'pKa') families = withPKa(families, move, value);
    else if (move.what === 'flask') flask = moved(flask, move.column, change);
    else titrant = moved(titrant, move.column, change);
  }
  const { kw, gas } = system.balance;
  const balance = families === system.balance.families ? system.balance : balanceOf(kw, families, gas);
  return { balance, flask, titrant };
}

const moved = (column: IonColumn, direction: IonColumn, by: number): IonColumn => ({
  volume: column.volume,
  charge: column.charge + by * direction.charge,
  squares: column.squares + by * direction.squares,
  amounts: Float64Array.from(column.amounts, (n, i) => n + by * numberAt(direction.amounts, i)),
});

function withPKa(
  families: readonly Family[],
  { family: index, step }: ConstantMove,
  pKa: number,
): readonly Family[] {
  const family = families[index] as Family;
  const constants = family.constants.slice();
  const reciprocals = family.reciprocals.slice();
  constants[step] = 10 ** -pKa;
  reciprocals[step] = 10 ** pKa;
  const inOrder = constants.every((k, i) => i === 0 || k <= numberAt(constants, i - 1));
  return families.map((each, i) => (i === index ? { ...each, constants, reciprocals, inOrder } : each));
}
