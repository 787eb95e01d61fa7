import type { StepAt } from '../../equilibrium/steps-in-order.js';
import { numberAt } from '../../solver/number-at.js';
import { equation, type Term } from '../../substance/equation.js';
import type { MixtureModel } from '../model/mixture-model.js';
import { chargeBeyondRounding } from './stoichiometric-volumes.js';

/**
 * The step that an equivalence point completes, in the trade's notation: `CO₃²⁻ + H⁺ → HCO₃⁻`.
 *
 * State k has the first k steps done. An acid titrant has then just undone step k + 1, a base titrant just done step k;
 * where there is no such step, the analyte's free OH- or H+ is used up. A titrant that changes by several protons meets
 * as many of the analyte: `2 CO₃²⁻ + H₂C₂O₄ → 2 HCO₃⁻ + C₂O₄²⁻`. Where states tie, each is named. Water is put where it
 * balances (equation.ts): `HCO₃⁻ + H⁺ → CO₂(aq) + H₂O`, `B(OH)₃ + OH⁻ → B(OH)₄⁻`.
 *
 * @param acid - whether the titrant is the acid of the two (stoichiometric-volumes.ts)
 * @internal
 */
export function reactionOf(
  mixture: MixtureModel,
  order: readonly StepAt[],
  states: readonly number[],
  acid: boolean,
): string {
  const completed = states.map((state) => ({ state, step: order[acid ? state : state - 1] }));
  const ofProtolytes = completed.filter(({ step }) => step !== undefined);
  const ofAnalyte = ofProtolytes.filter(
    ({ step }) => numberAt(mixture.analyte.amounts, (step as StepAt).family) > 0,
  );
  const named = [ofAnalyte, ofProtolytes].find((list) => list.length > 0) ?? completed;
  return named
    .map(({ state, step }) => {
      const ofTitrant = step
        ? pairOf(mixture, step.family, step.step, step.step + 1)
        : acid
          ? hydroxide
          : freeProton;
      const partner = partnerOf(mixture, order, state, acid);
      if (!step && partner.isStrong) return strongReaction(mixture, acid);
      const { protons } = partner;
      if (acid) return met(protons, [ofTitrant.base, ofTitrant.acid], [partner.acid, partner.base]);
      return met(protons, [ofTitrant.acid, ofTitrant.base], [partner.base, partner.acid]);
    })
    .join('; ');
}

/** Open to a gas, an analyte holds its ions in place of free OH-: `HCO₃⁻ + H⁺ → CO₂(aq) + H₂O`. */
function strongReaction({ system: { gas } }: MixtureModel, acid: boolean): string {
  if (!gas || !acid) return met(1, [freeProton.acid, ''], [hydroxide.base, hydroxide.acid]);
  const [dissolved, ion] = gas.protolyte.species.map(({ formula }) => formula) as [string, string];
  return met(1, [ion, dissolved], [freeProton.acid, '']);
}

/** Two forms of one acid, and how many protons lie between them. */
interface Pair {
  readonly acid: string;
  readonly base: string;
  readonly protons: number;
}

/** No species at all. */
const freeProton: Pair = { acid: 'H+', base: '', protons: 1 };
const hydroxide: Pair = { acid: 'H2O', base: 'OH-', protons: 1 };

/** The forms of one protolyte that have lost so many protons. */
function pairOf({ system }: MixtureModel, family: number, fewer: number, more: number): Pair {
  const formula = (lost: number) => system.protolytes[family]?.species[lost]?.formula ?? '';
  return { acid: formula(fewer), base: formula(more), protons: more - fewer };
}

/**
 * The pair by which the titrant gives or takes protons: free H+ or OH- where it is a strong acid or base in excess of
 * its own protolytes, else the form in which its protolyte comes and the one it has in this state.
 */
function partnerOf(
  mixture: MixtureModel,
  order: readonly StepAt[],
  state: number,
  acid: boolean,
): Pair & { readonly isStrong: boolean } {
  const { titrant, system } = mixture;
  const ofTitrant = order.filter(({ family }) => numberAt(titrant.amounts, family) > 0);
  const charges = Array.from({ length: ofTitrant.length + 1 }, (_, done) =>
    chargeBeyondRounding(titrant, system.balance.families, ofTitrant.slice(0, done)),
  );
  const at = charges.findIndex((charge) => charge <= 0); // steps done in the titrant as it stands
  const exact = charges[at] === 0;
  const done = acid && !exact ? at - 1 : at; // in the form that gives protons, or takes them
  const family = ofTitrant[acid ? done : done - 1]?.family;
  if (family === undefined) return { ...(acid ? freeProton : hydroxide), isStrong: true };

  const lostIn = (steps: readonly StepAt[]) => steps.filter((step) => step.family === family).length;
  const before = lostIn(ofTitrant.slice(0, done));
  const after = lostIn(order.slice(0, state));
  const pair = acid ? pairOf(mixture, family, before, after) : pairOf(mixture, family, after, before);
  return { ...pair, isStrong: false };
}

/** The reaction of one pair with another, each from its first form to its second, in these numbers. */
function met(count: number, own: readonly [string, string], partner: readonly [string, string]): string {
  const side = (k: 0 | 1): Term[] => [
    { count, formula: own[k] },
    { count: 1, formula: partner[k] },
  ];
  return equation(side(0), side(1));
}
