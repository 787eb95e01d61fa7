import type { IonColumn } from '../../equilibrium/activity/real-system.js';
import { type Charge, chargeAt, chargeOf, emptyCharge } from '../../equilibrium/charge-balance.js';
import { emptyRoot, hydrogenIon } from '../../equilibrium/hydrogen-ion.js';
import type { System } from '../../equilibrium/system.js';
import { numberAt } from '../../solver/number-at.js';

/**
 * The numbers of a titration: analyte (mmol in V₀ mL) and titrant (mmol per mL) over one set of protolytes.
 *
 * At one pH both share every mean charge, so the charge balance of any mixture is linear in the titrant's volume V:
 *
 *   F(h, V) = A(h) + V·T(h)       A: charge of the analyte, mmol; T: of one mL of titrant, mmol/mL        (1)
 *
 * and everything else follows: V(pH) = −A/T (2), dpH/dV = T / (ln10 · ∂F/∂ln h) (3).
 */
export interface MixtureModel {
  readonly system: System;
  readonly analyte: IonColumn;
  /** Of one mL. */
  readonly titrant: IonColumn;
}

/** The two columns of a system as analyte and titrant. @internal */
export function mixtureModelOf(system: System): MixtureModel {
  const [analyte, titrant] = system.columns as readonly [IonColumn, IonColumn];
  const { volume } = titrant;
  return {
    system,
    analyte,
    titrant: {
      volume: 1,
      charge: titrant.charge / volume,
      squares: titrant.squares / volume,
      amounts: Float64Array.from(titrant.amounts, (n) => n / volume),
    },
  };
}

/** What is in the beaker after `mL` of titrant. @internal */
export function columnAt({ analyte, titrant }: MixtureModel, mL: number): IonColumn {
  const amounts = new Float64Array(analyte.amounts.length);
  for (let i = 0; i < amounts.length; i += 1)
    amounts[i] = numberAt(analyte.amounts, i) + mL * numberAt(titrant.amounts, i);
  return {
    volume: analyte.volume + mL,
    charge: analyte.charge + mL * titrant.charge,
    squares: analyte.squares + mL * titrant.squares,
    amounts,
  };
}

/** Hydrogen-ion concentration after `mL` of titrant, mol/L. @internal */
export function hydrogenIonAt(mixture: MixtureModel, mL: number): number {
  return hydrogenIon(mixture.system.balance, columnAt(mixture, mL), 0, emptyRoot()).h;
}

/** A and T of (1) at one h. */
export interface Charges {
  readonly analyte: Charge;
  /** Of one mL. */
  readonly titrant: Charge;
}

/** Room for both charges. @internal */
export const emptyCharges = (): Charges => ({ analyte: emptyCharge(), titrant: emptyCharge() });

/** Both charges from one evaluation of the charge balance. @internal */
export function chargesAt({ system, analyte, titrant }: MixtureModel, h: number, out: Charges): Charges {
  const { moments } = chargeAt(system.balance, analyte, h, out.analyte);
  chargeOf(moments, titrant, out.titrant);
  return out;
}

/** dpH/dV after `mL` of titrant, where the hydrogen-ion concentration is h: (3). @internal */
export function slopeOfMixture(mixture: MixtureModel, mL: number, h: number, room = emptyCharges()): number {
  return slopeOfCharges(chargesAt(mixture, h, room), mL);
}

/** The volume at which the hydrogen-ion concentration is h, whatever its sign: (2). @internal */
export function volumeOfMixture(mixture: MixtureModel, h: number, room = emptyCharges()): number {
  return volumeOfCharges(chargesAt(mixture, h, room));
}

/** (2), mL. @internal */
export const volumeOfCharges = ({ analyte, titrant }: Charges): number => -analyte.net / titrant.net;

/** (3) after `mL` of titrant, per mL. @internal */
export const slopeOfCharges = ({ analyte, titrant }: Charges, mL: number): number =>
  titrant.net / (Math.LN10 * (analyte.slope + mL * titrant.slope));
