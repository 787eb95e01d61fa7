import { chargeAt, chargeOf, emptyCharge } from '../../equilibrium/charge-balance.js';
import type { Family } from '../../equilibrium/family.js';
import { emptyRoot, hydrogenIon } from '../../equilibrium/hydrogen-ion.js';
import { numberAt } from '../../solver/number-at.js';
import type { Chemistry, ChemistryAt } from './chemistry.js';
import { constantMoments } from './constant-moments.js';
import type { Respond } from './response.js';

/**
 * The response where γ = 1. With F(ln h, θ) = 0 the charge balance,
 *
 *   dpH/dθ = (∂F/∂θ) / (ln10 · ∂F/∂ln h)                                                             (1)
 *
 * and ∂F/∂θ is the charge of what θ adds: of one mL of titrant for the slope, of a parameter's contents for its own. For
 * a pKa it is ln10·n·dλ/d ln K (constant-moments.ts). One evaluation of the balance serves all. Each search starts from
 * the one before.
 *
 * @internal
 */
export function idealResponse({ moves }: Chemistry, { balance, flask, titrant }: ChemistryAt): Respond {
  const root = emptyRoot();
  const charge = emptyCharge();
  const added = emptyCharge();
  const amounts = new Float64Array(flask.amounts.length);
  let guess = 0;
  return (mL, out, withMoves) => {
    for (let i = 0; i < amounts.length; i += 1)
      amounts[i] = numberAt(flask.amounts, i) + mL * numberAt(titrant.amounts, i);
    const column = { volume: flask.volume + mL, charge: flask.charge + mL * titrant.charge, amounts };
    const { h } = hydrogenIon(balance, column, guess, root);
    guess = h;
    const { slope, moments } = chargeAt(balance, column, h, charge);
    const perCharge = 1 / (Math.LN10 * slope);
    out.pH = -Math.log10(h);
    out.slope = chargeOf(moments, titrant, added).net * perCharge;
    if (!withMoves) return;
    for (let j = 0; j < moves.length; j += 1) {
      const move = moves[j];
      if (!move) continue;
      if (move.what === 'pKa') {
        const { lost } = constantMoments(balance.families[move.family] as Family, h, move.step);
        out.moves[j] = (numberAt(amounts, move.family) * lost) / slope;
      } else {
        const { net } = chargeOf(moments, move.column, added);
        out.moves[j] = (move.what === 'titrant' ? mL * net : net) * perCharge;
      }
    }
  };
}
