import { frozen } from '../../frozen.js';
import type { Source } from '../../source.js';
import { kiellandSizes, kiellandSource } from './kielland-sizes.js';

/**
 * A law of the kind of Debye and Hückel as plain data, its numbers standing for the decimals that they are written as:
 *
 *   log10 γ = −z²·A·(√I/(1 + b·√I) − c·I)
 *
 * Another law of this form is another object: `{ ...davies, name: 'Davies (0.2 I)', c: 0.2, upTo: 0.2 }`.
 */
export interface ActivityLaw {
  readonly name: string;
  /**
   * A at 25 °C, for a law that was fitted with one; it moves with temperature in proportion to that of `debyeHuckelAt`,
   * which is what is taken where this is left out.
   */
  readonly A25?: number;
  /** b, (L/mol)^½; 0 if left out. */
  readonly b?: number;
  /** c, L/mol; 0 if left out. */
  readonly c?: number;
  /**
   * Sizes of ions in Å by formula, 4.5 Å for those not listed: instead of b, which then is B of `debyeHuckelAt` times
   * the size.
   */
  readonly sizes?: Readonly<Record<string, number>>;
  /** Of all ions not in `sizes`, Å; 4.5 if left out. */
  readonly otherwise?: number;
  /** The ionic strength, mol/L, up to which its authors recommend it. */
  readonly upTo?: number;
  readonly source: Source;
}

/**
 * The size of an ion that no table lists, Å: common practice, the middle of Kielland's range for ions of charge 1 and
 * 2.
 */
export const sizeOtherwise = 4.5;

/** No interaction at all: γ = 1. */
export const idealLaw: ActivityLaw = /*#__PURE__*/ frozen({
  name: 'ideal',
  A25: 0,
  source: { kind: 'commonPractice', note: 'an ideal solution: the limit of infinite dilution' },
});

/** The limiting law of Debye and Hückel, log10 γ = −A·z²·√I. For I below 0.005 mol/L. */
export const debyeHuckelLimitingLaw: ActivityLaw = /*#__PURE__*/ frozen({
  name: 'Debye–Hückel limiting law',
  upTo: 0.005,
  source: { kind: 'published', work: 'debye-huckel-1923', where: 'the limiting law' },
});

/** The extended law of Debye and Hückel with Kielland's sizes of ions. For I up to 0.1 mol/L. */
export const debyeHuckelExtendedLaw: ActivityLaw = /*#__PURE__*/ frozen({
  name: 'Debye–Hückel extended law',
  sizes: kiellandSizes,
  upTo: 0.1,
  source: kiellandSource,
});

/** Güntelberg's law, log10 γ = −A·z²·√I/(1 + √I): one ion size for all. For I below 0.1 mol/L. */
export const guntelbergLaw: ActivityLaw = /*#__PURE__*/ frozen({
  name: 'Güntelberg',
  b: 1,
  upTo: 0.1,
  source: { kind: 'published', work: 'guntelberg-1926', where: 'the equation for mean coefficients' },
});

/**
 * The convention of Bates and Guggenheim for chloride, log10 γ = −A·z²·√I/(1 + 1.5·√I), for every ion. For I up to 0.1
 * mol/L.
 */
export const batesGuggenheimLaw: ActivityLaw = /*#__PURE__*/ frozen({
  name: 'Bates–Guggenheim',
  b: 1.5,
  upTo: 0.1,
  source: { kind: 'published', work: 'bates-guggenheim-1960', where: 'the convention for chloride' },
});

/** The Davies equation of 1962, log10 γ = −A·z²·(√I/(1 + √I) − 0.3·I), A = 0.509 at 25 °C. For I up to 0.5 mol/L. */
export const daviesLaw: ActivityLaw = /*#__PURE__*/ frozen({
  name: 'Davies (0.3 I)',
  A25: 0.509,
  b: 1,
  c: 0.3,
  upTo: 0.5,
  source: {
    kind: 'fromMemory',
    work: 'davies-1962',
    note: 'coefficient 0.3, A = 0.509 at 25 °C, up to 0.5 mol/L',
  },
});
