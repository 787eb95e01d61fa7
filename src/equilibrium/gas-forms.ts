import { numberAt } from '../solver/number-at.js';
import type { SolvedSolution } from './solve-solution.js';
import type { System } from './system.js';

/** Concentrations of the gas's forms at h, the dissolved gas first, mol/L. @internal */
export function gasForms(
  system: System,
  { balance, real }: Pick<SolvedSolution, 'balance' | 'real'>,
  h: number,
): number[] {
  const { gas } = system;
  if (!gas) return [];
  const neutral = real ? (real.coefficients.gamma[numberAt(real.gasKinds, 0)] as number) : 1;
  return [gas.dissolved / neutral, ...Array.from(balance.gas ?? [], (level, j) => level / h ** (j + 1))];
}
