import { frozen } from '../frozen.js';
import type { Source } from '../source.js';

/** A gas that leaves a solution in which its dissolved form stands. */
export interface Gas {
  readonly name: string;
  /** Labels of the dissolved form. */
  readonly dissolved: readonly string[];
  /** mol/L in water under 1 atm of the gas, at 25 °C. */
  readonly molarPerAtm: number;
  readonly solubilitySource: Source;
  /** Its pressure over the solution from which a caution is given, atm. */
  readonly fromAtm: number;
  readonly limitSource: Source;
  /** What it does, and what to do. */
  readonly words: string;
}

// The caution begins where the air that has come to rest over the solution would hold more than the short-term limit of
// a workplace (15 minutes). The air of a room holds less, but a nose over a beaker does not.

const henry = (note: string): Source => ({
  kind: 'fromMemory',
  note: `Henry's law constant at 25 °C: ${note}`,
});
const shortTerm = (note: string): Source => ({
  kind: 'fromMemory',
  note: `indicative occupational exposure limit of the European Union for 15 minutes: ${note}`,
});

/**
 * Chlorine: its dissolved form is no form of a protolyte, and follows from hypochlorous acid and chloride.
 *
 * @internal
 */
export const chlorine: Gas = /*#__PURE__*/ frozen({
  name: 'chlorine',
  dissolved: [],
  molarPerAtm: 0.093,
  solubilitySource: /*#__PURE__*/ henry('chlorine 0.093 mol/(L atm)'),
  fromAtm: 0.5e-6,
  limitSource: /*#__PURE__*/ shortTerm('chlorine 0.5 ppm (Directive 2006/15/EC)'),
  words: 'It is toxic and burns the lungs: never bring acid to hypochlorite.',
});

/** Cl2 + H2O ⇌ HClO + H+ + Cl−, mol²/L², at 25 °C. @internal */
export const chlorineHydrolysis: { readonly K: number; readonly source: Source } = /*#__PURE__*/ frozen({
  K: 4e-4,
  source: {
    kind: 'fromMemory',
    note: 'hydrolysis of chlorine, 3.9e-4 to 4.5e-4 mol²/L² at 25 °C (R. E. Connick, Y.-T. Chia, J. Am. Chem. Soc. 81, 1280 (1959))',
  },
});

/** Hypochlorite is made from chlorine and alkali, which gives as much chloride. @internal */
export const chlorideOfHypochlorite: Source = /*#__PURE__*/ frozen({
  kind: 'commonPractice',
  note: 'hypochlorite is sold with at least as much chloride',
});

/** The one whose caution is for foam and pressure, not for what one breathes. */
const carbonDioxide: Gas = {
  name: 'carbon dioxide',
  dissolved: ['CO2(aq)', 'H2CO3', 'CO2'],
  molarPerAtm: 0.034,
  solubilitySource: /*#__PURE__*/ henry('carbon dioxide 0.034 mol/(L atm)'),
  fromAtm: 0.1,
  limitSource: { kind: 'commonPractice', note: 'a tenth of an atmosphere more lifts a loose stopper' },
  words: 'It may foam over: leave room, add acid in portions, and never close the vessel with a stopper.',
};

/** The gases that a protolyte sets free. @internal */
export const gases: readonly Gas[] = /*#__PURE__*/ frozen([
  {
    name: 'hydrogen cyanide',
    dissolved: ['HCN', 'HCN(aq)'],
    molarPerAtm: 10,
    solubilitySource: /*#__PURE__*/ henry('hydrogen cyanide 9 to 12 mol/(L atm)'),
    fromAtm: 4.5e-6,
    limitSource: /*#__PURE__*/ shortTerm('hydrogen cyanide 4.5 ppm (Directive (EU) 2017/164)'),
    words: 'It kills, through the skin too: no such mixture in a teaching lab.',
  },
  {
    name: 'hydrogen sulfide',
    dissolved: ['H2S', 'H2S(aq)'],
    molarPerAtm: 0.1,
    solubilitySource: /*#__PURE__*/ henry('hydrogen sulfide 0.1 mol/(L atm)'),
    fromAtm: 10e-6,
    limitSource: /*#__PURE__*/ shortTerm('hydrogen sulfide 10 ppm (Directive 2009/161/EU)'),
    words: 'It is very toxic, and at dangerous levels the nose no longer smells it: fume cupboard only.',
  },
  {
    name: 'sulfur dioxide',
    dissolved: ['SO2(aq)', 'H2SO3', 'SO2'],
    molarPerAtm: 1.3,
    solubilitySource: /*#__PURE__*/ henry('sulfur dioxide 1.2 to 1.4 mol/(L atm)'),
    fromAtm: 1e-6,
    limitSource: /*#__PURE__*/ shortTerm('sulfur dioxide 1 ppm (Directive (EU) 2017/164)'),
    words: 'It irritates the airways and may set off asthma: fume cupboard only.',
  },
  {
    name: 'nitrogen oxides, counted as nitrous acid,',
    dissolved: ['HNO2', 'HNO2(aq)'],
    molarPerAtm: 49,
    solubilitySource: /*#__PURE__*/ henry(
      'nitrous acid 49 mol/(L atm); the oxides into which it falls apart dissolve less',
    ),
    fromAtm: 1e-6,
    limitSource: /*#__PURE__*/ shortTerm('nitrogen dioxide 1 ppm (Directive (EU) 2017/164)'),
    words: 'They are toxic and harm the lungs hours later: fume cupboard only.',
  },
  {
    name: 'ammonia',
    dissolved: ['NH3', 'NH3(aq)'],
    molarPerAtm: 59,
    solubilitySource: /*#__PURE__*/ henry('ammonia 59 mol/(L atm)'),
    fromAtm: 50e-6,
    limitSource: /*#__PURE__*/ shortTerm('ammonia 50 ppm (Directive 2000/39/EC)'),
    words: 'It stings eyes and airways: fume cupboard, or a well ventilated room for a few millilitres.',
  },
  carbonDioxide,
]);
