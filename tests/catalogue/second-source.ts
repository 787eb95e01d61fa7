import { findById, indicators } from 'protolysis';
import dyes from '../reference/indicators-in-other-works.json' with { type: 'json' };
import data from '../reference/second-sources.json' with { type: 'json' };
import { type CatalogueValue, catalogueValues, type Kind } from './values.js';

/** What a work prints: its own measurements, what others measured, or values whose origin it does not name. */
interface OtherWork {
  readonly citation: string;
  readonly prints: string;
  readonly year?: number;
  readonly is: readonly string[];
}

/** A value as another work prints it. */
export interface OtherValue {
  readonly datum: string;
  readonly printed: string;
  readonly work: string;
  readonly plusMinus?: number;
  readonly celsius?: number;
  readonly apart?: string;
}

const otherWorks: Readonly<Record<string, OtherWork>> = data.works;
export const otherValues: readonly OtherValue[] = data.values;

export function workOf({ work }: OtherValue): OtherWork {
  const found = otherWorks[work];
  if (found === undefined) throw new Error(`no work ${work}`);
  return found;
}

/**
 * By how much careful works differ; beyond it a value is looked into.
 *
 * - pKa, 0.02: the compilations of Perrin and of Serjeant & Dempsey call a pKa reliable up to there (from memory).
 * - dH and dCp: what moves pKa by 0.01 between 25 °C and 50 °C, which is 0.74 kJ/mol and 54 J/(mol·K).
 * - log10 of a solubility product, 0.14: 0.8 kJ/mol, which the NBS tables allow a Gibbs energy that they print to 0.01
 *   kJ/mol (8 to 80 units of the last digit; from memory).
 * - a solubility, 2 %: twice the standard error of 1 % about the curve through 66 measurements of sodium oxalate.
 * - a density, 0.005 g/mL: half a percent of strength, for sodium hydroxide 1.525 at 50.0 % and 1.53 at 50.5 %.
 * - a strength, 1 %: half the width of the usual assay limits, such as 36.5 to 38.0 % and 28.0 to 30.0 %.
 * - a heat, as dH: 1.3 % of the heat of neutralisation.
 * - a pH standard, 0.01: what Buck et al. 2002 give pH(S) with its convention.
 * - pKw 0.02: ±0.01 of each of the two formulations (from memory); permittivity 0.1: 78.30 in the one work and 78.41 in the other.
 */
const spreads: Readonly<Partial<Record<Kind, number>>> = {
  pKa: 0.02,
  'dH of ionisation': 0.74,
  'dCp of ionisation': 54,
  'solubility product': 0.14,
  'density as sold': 0.005,
  'strength as sold': 1,
  heat: 0.74,
  'pH standard': 0.01,
};

const spreadOf = ({ name, kind, at }: CatalogueValue): number => {
  if (kind === 'solubility') return 0.02 * at(25);
  if (name === 'water.pKw') return 0.02;
  if (name === 'water.permittivity') return 0.1;
  return spreads[kind] ?? Number.NaN;
};

/** Half a unit of the last digit printed. */
const halfUnit = (printed: string): number => 0.5 * 10 ** -(printed.split('.')[1]?.length ?? 0);

export const differenceOf = (value: CatalogueValue, { printed, celsius = 25 }: OtherValue): number =>
  Number(printed) - value.at(celsius);

/** Whether a difference is more than both works allow, the last digit and the stated uncertainty counted in. */
export const isApart = (value: CatalogueValue, other: OtherValue): boolean =>
  !(
    Math.abs(differenceOf(value, other)) <=
    spreadOf(value) + (other.plusMinus ?? 0) + halfUnit(other.printed) + 1e-9
  );

/** Within these a measurement that is older than an evaluation may be what the evaluation took over. */
const takenOver: Readonly<Partial<Record<Kind, number>>> = {
  pKa: 0.002,
  'dH of ionisation': 0.15,
  'dCp of ionisation': 2,
  'pH standard': 0.001,
};

function isTakenOver(other: OtherValue): boolean {
  const value = catalogueValues.find(({ name }) => name === other.datum);
  if (value === undefined) throw new Error(`no ${other.datum}`);
  const same = takenOver[value.kind];
  return (
    same !== undefined &&
    Math.abs(differenceOf(value, other)) <= Math.max(same, halfUnit(other.printed)) + 1e-9
  );
}

/** What a value shares its source with, as a rule: the other constants of the step, the other temperatures of the standard. */
const familyOf = ({ datum }: OtherValue): string => datum.slice(0, datum.lastIndexOf('.'));

function mayBeOurs(value: CatalogueValue, other: OtherValue): boolean {
  const { prints, year } = workOf(other);
  if (prints !== 'measurement') return prints === 'unnamed';
  const [, ourYear] = /-(\d{4})$/.exec(workUnder(value) ?? '') ?? [];
  if (year !== undefined && year > Number(ourYear)) return false;
  return otherValues.some(
    (one) => one.work === other.work && familyOf(one) === familyOf(other) && isTakenOver(one),
  );
}

/** The work that the catalogue cites for a value. */
export const workUnder = ({ source }: CatalogueValue): string | undefined =>
  'work' in source ? source.work : undefined;

/**
 * Whether a value has a second source that does not rest on the first: a work that is known not to, or two measurements,
 * of which our source can have taken over one. It has to print more digits than careful works differ by.
 */
export function hasSecondSource(value: CatalogueValue): boolean {
  if (indicatorsElsewhere.some(({ datum }) => datum === value.name)) return true;
  const others = otherValues.filter(
    ({ datum, printed }) => datum === value.name && halfUnit(printed) <= spreadOf(value) + 1e-9,
  );
  if (others.some((other) => !mayBeOurs(value, other))) return true;
  const measured = others.filter((other) => workOf(other).prints === 'measurement');
  return new Set(measured.map(({ work }) => work)).size > 1;
}

/** Pharmacopoeias and measurements; courses, suppliers and encyclopedias do not name the origin of a range. */
const named = /Pharmacop|Environ\. Sci\. Technol\.|Limnol\.|Talanta/;

/** Ranges and pKIn of indicators elsewhere, with the larger difference of the two ends; indicators.test.ts judges them. */
export const indicatorsElsewhere: readonly { readonly datum: string; readonly difference: number }[] = [
  ...dyes.ranges
    .filter(({ work }) => named.test(work))
    .map(({ indicator, from, to }) => {
      const { transition } = findById(indicators, indicator);
      const ends = [transition.from - from, transition.to - to].map(Math.abs);
      return { datum: `indicators.${indicator}.range`, difference: Math.max(...ends) };
    }),
  ...dyes.pKIns
    .filter(({ work }) => named.test(work))
    .map(({ indicator, pKIn }) => ({
      datum: `indicators.${indicator}.pKIn`,
      difference: Math.abs((findById(indicators, indicator).pKIn ?? Number.NaN) - pKIn),
    })),
];
