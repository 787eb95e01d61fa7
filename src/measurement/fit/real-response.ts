import { compensatingChange } from '../../equilibrium/activity/compensating-change.js';
import type { IonColumn } from '../../equilibrium/activity/real-system.js';
import { emptyState, selfConsistent } from '../../equilibrium/activity/self-consistent.js';
import type { Family } from '../../equilibrium/family.js';
import { realSystemOf } from '../../equilibrium/system.js';
import { numberAt } from '../../solver/number-at.js';
import { firstDerivatives } from '../../titration/model/real-derivatives.js';
import type { Chemistry, ChemistryAt } from './chemistry.js';
import { constantMoments } from './constant-moments.js';
import type { Respond } from './response.js';

/**
 * The response with coefficients of activity: pH and ionic strength move together, by (1) of real-derivatives.ts in the
 * direction of the titrant, of a parameter's contents, or of a constant. Each search starts from the one before.
 *
 * @internal
 */
export function realResponse({ system, moves }: Chemistry, at: ChemistryAt): Respond {
  const { balance, flask, titrant } = at;
  const real = realSystemOf({ ...system, balance });
  const state = emptyState();
  return (mL, out, withMoves) => {
    const column = mixed(flask, titrant, mL);
    selfConsistent(real, column, state);
    const along = (direction: IonColumn) =>
      -firstDerivatives(real, state, column, direction).activity / Math.LN10;
    out.pH = -Math.log10(state.activity);
    out.slope = along(titrant);
    if (!withMoves) return;
    for (let j = 0; j < moves.length; j += 1) {
      const move = moves[j];
      if (!move) continue;
      if (move.what === 'pKa') {
        const { lost, strength } = constantMoments(
          real.conditional.families[move.family] as Family,
          state.h,
          move.step,
        );
        const n = numberAt(column.amounts, move.family);
        // per ln K; a pKa is −ln K/ln10 and a pH −ln a/ln10, so it is the same per pKa
        out.moves[j] = compensatingChange(state.moments, column.volume, -n * lost, n * strength).activity;
      } else out.moves[j] = along(move.column) * (move.what === 'titrant' ? mL : 1);
    }
  };
}

function mixed(flask: IonColumn, titrant: IonColumn, mL: number): IonColumn {
  return {
    volume: flask.volume + mL,
    charge: flask.charge + mL * titrant.charge,
    squares: flask.squares + mL * titrant.squares,
    amounts: Float64Array.from(flask.amounts, (n, i) => n + mL * numberAt(titrant.amounts, i)),
  };
}
