import type { Column } from '../equilibrium/charge-balance.js';
import type { StepAt } from '../equilibrium/steps.js';
import { printFormula } from '../substance/print-formula.js';
import type { Engine } from './engine.js';
import { chargeOfState } from './state-volumes.js';

/**
 * The step that a stoichiometric point completes, in the trade's notation: `CO₃²⁻ + H⁺ → HCO₃⁻`.
 *
 * State k has the first k steps done. An acid titrant has then just undone step k + 1, a base titrant just done step k;
 * where there is no such step, strong acid and strong base have met. Where states tie, each is named.
 *
 * @param acid - whether the titrant is the more acidic of the two
 * @internal
 */
export function reactionOf(
  engine: Engine,
  order: readonly StepAt[],
  states: readonly number[],
  acid: boolean,
): string {
  const steps = states.map((state) => order[acid ? state : state - 1]).filter((step) => step !== undefined);
  const ofAnalyte = steps.filter(({ family }) => (engine.analyte.amounts[family] as number) > 0);
  const named = ofAnalyte.length > 0 ? ofAnalyte : steps;
  if (named.length === 0) return gasReaction(engine, acid) ?? strongReaction;

  const partner = partnerOf(engine, order, acid);
  return named
    .map((step) => {
      const own = pairOf(engine, step);
      if (acid) return `${own.base} + ${partner.acid} → ${own.acid}${partner.base && ` + ${partner.base}`}`;
      return `${own.acid} + ${partner.base} → ${own.base} + ${partner.acid}`;
    })
    .join('; ');
}

const strongReaction = `${printFormula('H+')} + ${printFormula('OH-')} → ${printFormula('H2O')}`;

/** Open to a gas, a solution holds its ions in place of free OH-: `HCO₃⁻ + H⁺ → CO₂(aq)`. */
function gasReaction({ setting }: Engine, acid: boolean): string | null {
  const [gas, ion] = (setting.gas?.protolyte.species ?? []).map(({ formula }) => printFormula(formula));
  if (!gas || !ion) return null;
  return acid ? `${ion} + ${printFormula('H+')} → ${gas}` : `${gas} + ${printFormula('OH-')} → ${ion}`;
}

/** A conjugate pair, printed. Free H+ leaves nothing behind. */
interface Pair {
  readonly acid: string;
  readonly base: string;
}

function pairOf({ setting }: Engine, { family, step }: StepAt): Pair {
  const [acid, base] = (setting.protolytes[family]?.species ?? []).slice(step, step + 2);
  return { acid: printFormula(acid?.formula ?? ''), base: printFormula(base?.formula ?? '') };
}

/**
 * The pair by which the titrant gives or takes protons: free H+ or OH- where it is a strong acid or base in excess of its
 * own protolytes, else the step at which its own make-up stands.
 */
function partnerOf(engine: Engine, order: readonly StepAt[], acid: boolean): Pair {
  const { titrant, setting } = engine;
  const own = order.filter(({ family }) => (titrant.amounts[family] as number) > 0);
  const charges = Array.from({ length: own.length + 1 }, (_, done) =>
    chargeOfState(titrant, setting.balance.families, own.slice(0, done)),
  );
  const at = charges.findIndex((charge) => charge <= rounding(titrant)); // steps done in the titrant as it stands
  const exact = at >= 0 && Math.abs(charges[at] as number) <= rounding(titrant);
  const step = acid && exact ? own[at] : own[at - 1];
  const strong = acid ? at === 0 && !exact : at < 0;
  if (strong || !step)
    return acid
      ? { acid: printFormula('H+'), base: '' }
      : { acid: printFormula('H2O'), base: printFormula('OH-') };
  return pairOf(engine, step);
}

const rounding = ({ charge }: Column) => 1e-12 * Math.abs(charge);
