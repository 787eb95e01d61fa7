import type { IonColumn } from '../equilibrium/activity/real-system.js';
import { type Charge, chargeAt, emptyCharge } from '../equilibrium/charge-balance.js';
import { emptyRoot, hydrogenIon } from '../equilibrium/hydrogen-ion.js';
import type { Setting } from '../equilibrium/setting.js';

/**
 * The numbers of a titration: analyte (mmol in V₀ mL) and titrant (mmol per mL) over one set of protolytes.
 *
 * At one pH both share every mean charge, so the charge balance of any mixture is linear in the titrant's volume V:
 *
 *   F(h, V) = A(h) + V·T(h)       A: charge of the analyte, mmol; T: of one mL of titrant, mmol/mL        (1)
 *
 * and everything else follows: V(pH) = −A/T (2), dpH/dV = T / (ln10 · ∂F/∂ln h) (3).
 */
export interface Engine {
  readonly setting: Setting;
  readonly analyte: IonColumn;
  /** Of one mL. */
  readonly titrant: IonColumn;
}

/** @internal */
export function engineOf(setting: Setting): Engine {
  const [analyte, titrant] = setting.columns as readonly [IonColumn, IonColumn];
  const { volume } = titrant;
  return {
    setting,
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
export function mixtureAt({ analyte, titrant }: Engine, mL: number): IonColumn {
  return {
    volume: analyte.volume + mL,
    charge: analyte.charge + mL * titrant.charge,
    squares: analyte.squares + mL * titrant.squares,
    amounts: Float64Array.from(analyte.amounts, (n, i) => n + mL * (titrant.amounts[i] as number)),
  };
}

/** Hydrogen-ion concentration after `mL` of titrant, mol/L. @internal */
export function hAt(engine: Engine, mL: number): number {
  return hydrogenIon(engine.setting.balance, mixtureAt(engine, mL), 0, emptyRoot()).h;
}

/** dpH/dV after `mL` of titrant, where the hydrogen-ion concentration is h: (3). @internal */
export function slopeAt(engine: Engine, mL: number, h: number): number {
  const { balance } = engine.setting;
  const mixture = chargeAt(balance, mixtureAt(engine, mL), h, emptyCharge());
  return titrantCharge(engine, h).net / (Math.LN10 * mixture.slope);
}

/** The volume at which the hydrogen-ion concentration is h, whatever its sign: (2). @internal */
export function volumeAt(engine: Engine, h: number): number {
  return (
    -chargeAt(engine.setting.balance, engine.analyte, h, emptyCharge()).net / titrantCharge(engine, h).net
  );
}

/** Charge of one mL of titrant at h, mmol/mL. @internal */
export function titrantCharge({ setting, titrant }: Engine, h: number): Charge {
  return chargeAt(setting.balance, titrant, h, emptyCharge());
}
