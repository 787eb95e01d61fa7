import { frozen } from '../frozen.js';
import { at, Faults } from '../input/faults.js';
import { noteLength, readSource, type Source } from '../source.js';
import { readSparinglySoluble, type SparinglySoluble } from './sparingly-soluble.js';
import { wanted } from './wanted.js';

/** One form of a protolyte. */
export interface Species<Formula extends string = string> {
  /** A label in plain notation, such as `HCO3-` or `CO2(aq)`. */
  readonly formula: Formula;
  readonly charge: number;
}

/** The loss of one proton. */
export interface Step {
  /**
   * −log10 of the thermodynamic acidity constant at 25 °C and zero ionic strength (unless `ionicStrength` says
   * otherwise).
   */
  readonly pKa: number;
  /** Standard reaction enthalpy at 25 °C, kJ/mol. */
  readonly dH?: number;
  /** Standard reaction heat capacity at 25 °C, J/(mol·K). */
  readonly dCp?: number;
  /** Of the pKa. */
  readonly standardUncertainty?: number;
  /** The constant fitted over a range of temperatures. Where it is there, it is used instead of dH and dCp. */
  readonly log10K?: TemperatureFit;
  /**
   * Ionic strength of the salt medium in which the constant was measured, mol/L; left out or 0: a thermodynamic
   * constant.
   */
  readonly ionicStrength?: number;
  /**
   * Of a constant in a medium: between concentrations throughout (`concentration`, the default), or with the activity
   * of H+, as a glass electrode gives it, and concentrations of the two forms (`mixed`).
   */
  readonly convention?: 'concentration' | 'mixed';
  readonly source: Source;
  /** Of dH and dCp, where it differs from `source`. */
  readonly thermalSource?: Source;
}

/** A fitted constant: log10 K = a + b·T + c/T + d·log10 T + e/T², T in K. */
export interface TemperatureFit {
  readonly coefficients: readonly [a: number, b: number, c: number, d: number, e: number];
  /** From which to which temperature it holds, °C. */
  readonly celsius: readonly [from: number, to: number];
  readonly source: Source;
}

/** Another evaluation of a step, kept beside the one in use. */
export interface Alternative {
  /** Which step, from 1. */
  readonly step: number;
  readonly pKa: number;
  readonly source: Source;
  readonly note?: string;
}

/** One acid with all its conjugate bases. */
export interface Protolyte<Formula extends string = string> {
  /** Known by this in every calculation. */
  readonly id: string;
  readonly name: string;
  /** From most to least protonated; charges fall by one. */
  readonly species: readonly Species<Formula>[];
  /** One fewer than the species. */
  readonly steps: readonly Step[];
  readonly alternatives?: readonly Alternative[];
  /** Solids of limited solubility that it forms. A note says where a solution is more than saturated. */
  readonly solids?: readonly SparinglySoluble[];
  /** The usual caution, in plain words (from memory, no substitute for the safety data sheet). */
  readonly hazard?: string;
  /** Of its place on the candidate list of substances of very high concern (REACH); left out where it is not on it. */
  readonly veryHighConcern?: Source;
  /** Why it is no buffer for a teaching lab. `chooseBuffer` leaves it out unless `include` names its id. */
  readonly notForBuffers?: { readonly reason: string; readonly source: Source };
  readonly notes?: readonly string[];
}

/** Limits of what a protolyte can be; the solver's scaling rests on them (equilibrium/family.ts). */
export const protolyteLimits = /*#__PURE__*/ frozen({ pKa: [-10, 20], steps: 16, charge: 20 } as const);

/**
 * Defines a protolyte: one acid with all its conjugate bases.
 *
 * Steps whose pKa falls from one to the next are accepted, with a note: the species between them never prevails.
 *
 * Formulas are labels: any text will do, but `printFormula` sets plain notation in print, with one charge bare at the
 * end and several in brackets: `HCO3-`, `CO3(2-)`.
 *
 * @param protolyte - species from most to least protonated, charges falling by one; pKa from −10 to 20, at most 16
 * steps
 * @returns the same data, plain and as good after a trip through JSON, with a note if the steps are out of order
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { defineProtolyte } from 'protolysis';
 *
 * const sulfamic = defineProtolyte({
 *   id: 'sulfamic',
 *   name: 'sulfamic acid',
 *   species: [
 *     { formula: 'H3NSO3', charge: 0 },
 *     { formula: 'H2NSO3-', charge: -1 },
 *   ],
 *   steps: [{ pKa: 0.99, source: { kind: 'fromMemory', note: 'the usual handbook value' } }],
 * });
 * sulfamic.steps.length; // => 1
 * ```
 */
export function defineProtolyte<const Formula extends string>(
  protolyte: Protolyte<Formula>,
): Protolyte<Formula> {
  const faults = new Faults('defineProtolyte');
  const read = readProtolyte(protolyte, '', faults) as Protolyte<Formula>;
  faults.done();
  const notes = [...new Set([...(read.notes ?? []), ...notesOnOrder(read)])];
  return frozen(notes.length > 0 ? { ...read, notes } : read);
}

const keys = {
  protolyte: [
    'id',
    'name',
    'species',
    'steps',
    'alternatives',
    'solids',
    'hazard',
    'veryHighConcern',
    'notForBuffers',
    'notes',
  ],
  species: ['formula', 'charge'],
  step: [
    'pKa',
    'dH',
    'dCp',
    'standardUncertainty',
    'log10K',
    'ionicStrength',
    'convention',
    'source',
    'thermalSource',
  ],
  fit: ['coefficients', 'celsius', 'source'],
  alternative: ['step', 'pKa', 'source', 'note'],
} as const;

/** Reads a protolyte from a caller's value, noting every fault. @internal */
export function readProtolyte(value: unknown, path: string, faults: Faults): Protolyte {
  const unread = faults.object(
    value,
    path,
    wanted(value, 'a protolyte', 'acids', 'carbonic'),
    keys.protolyte,
  );
  const { steps: mostSteps } = protolyteLimits;
  faults.text(unread.id, at(path, 'id'), 'an id');
  faults.text(unread.name, at(path, 'name'), 'a name');

  const species = readSpecies(
    faults.list(unread.species, at(path, 'species'), 'a list of species', 2, mostSteps + 1),
    at(path, 'species'),
    faults,
  );
  const steps = faults
    .list(unread.steps, at(path, 'steps'), 'a list of steps', 1, mostSteps)
    .map((item, index) => readStep(item, `${at(path, 'steps')}[${index}]`, faults));
  if (species.length > 0 && steps.length > 0 && species.length !== steps.length + 1)
    faults.add('conflict', at(path, 'steps'), `one step fewer than the ${species.length} species`, steps);

  if (unread.hazard !== undefined) faults.text(unread.hazard, at(path, 'hazard'), 'a text', noteLength);
  const read = { ...unread, species, steps } as unknown as Protolyte;
  const { alternatives, notForBuffers, notes, solids, veryHighConcern } = unread;
  return {
    ...read,
    ...(alternatives !== undefined && {
      alternatives: faults
        .list(alternatives, at(path, 'alternatives'), 'a list of { step, pKa, source }', 0, 100)
        .map((item, index) =>
          readAlternative(item, `${at(path, 'alternatives')}[${index}]`, steps.length, faults),
        ),
    }),
    ...(veryHighConcern !== undefined && {
      veryHighConcern: readSource(veryHighConcern, at(path, 'veryHighConcern'), faults),
    }),
    ...(notForBuffers !== undefined && {
      notForBuffers: readReason(notForBuffers, at(path, 'notForBuffers'), faults),
    }),
    ...(solids !== undefined && {
      solids: faults
        .list(solids, at(path, 'solids'), 'a list of solids', 0, 100)
        .map((item, index) => readSparinglySoluble(item, `${at(path, 'solids')}[${index}]`, faults)),
    }),
    ...(notes !== undefined && {
      notes: faults
        .list(notes, at(path, 'notes'), 'a list of notes', 0, 100)
        .map((note, index) => faults.text(note, `${at(path, 'notes')}[${index}]`, 'a note', noteLength)),
    }),
  };
}

function readReason(value: unknown, path: string, faults: Faults) {
  const unread = faults.object(value, path, 'a reason { reason, source }', ['reason', 'source']);
  return {
    reason: faults.text(unread.reason, at(path, 'reason'), 'a reason', noteLength),
    source: readSource(unread.source, at(path, 'source'), faults),
  };
}

function readSpecies(species: readonly unknown[], path: string, faults: Faults): Species[] {
  const formulas = new Set<unknown>();
  let before: unknown;
  return species.map((item, index) => {
    const unread = faults.object(item, `${path}[${index}]`, 'a species { formula, charge }', keys.species);
    const { formula, charge } = unread;
    faults.text(formula, `${path}[${index}].formula`, 'a formula');
    if (formulas.has(formula) && formula !== undefined)
      faults.add('conflict', `${path}[${index}].formula`, 'a formula that no other species has', formula);
    formulas.add(formula);

    const { charge: limit } = protolyteLimits;
    faults.number(charge, `${path}[${index}].charge`, 'a charge', { from: -limit, to: limit, integer: true });
    if (Number.isInteger(before) && Number.isInteger(charge) && charge !== Number(before) - 1)
      faults.add(
        'conflict',
        `${path}[${index}].charge`,
        `${Number(before) - 1}, one below the species before it`,
        charge,
      );
    before = charge;
    return unread as unknown as Species;
  });
}

/** The numbers that a step may carry beside its pKa. */
const numbersOfStep = [
  ['dH', 'an enthalpy in kJ/mol', { from: -1000, to: 1000 }],
  ['dCp', 'a heat capacity in J/(mol K)', { from: -1e4, to: 1e4 }],
  ['standardUncertainty', 'an uncertainty', { from: 0, to: 10 }],
  ['ionicStrength', 'an ionic strength in mol/L', { from: 0, to: 100 }],
] as const;

function readStep(item: unknown, path: string, faults: Faults): Step {
  const step = faults.object(item, path, 'a step { pKa, source }', keys.step);
  readPKa(step.pKa, path, faults);
  for (const [key, what, limits] of numbersOfStep)
    if (step[key] !== undefined) faults.number(step[key], `${path}.${key}`, what, limits);
  if (step.convention !== undefined && step.convention !== 'concentration' && step.convention !== 'mixed')
    faults.add('wrong-type', `${path}.convention`, "'concentration' or 'mixed'", step.convention);
  const source = readSource(step.source, `${path}.source`, faults);
  const fit = step.log10K === undefined ? {} : { log10K: readFit(step.log10K, `${path}.log10K`, faults) };
  const read = { ...step, ...fit, source } as unknown as Step;
  if (step.thermalSource === undefined) return read;
  return { ...read, thermalSource: readSource(step.thermalSource, `${path}.thermalSource`, faults) };
}

function readFit(item: unknown, path: string, faults: Faults): TemperatureFit {
  const fit = faults.object(item, path, 'a fit { coefficients, celsius, source }', keys.fit);
  const coefficients = faults
    .list(fit.coefficients, `${path}.coefficients`, 'the coefficients a to e', 5, 5)
    .map((one, index) =>
      faults.number(one, `${path}.coefficients[${index}]`, 'a coefficient', { from: -1e9, to: 1e9 }),
    );
  const celsius = faults
    .list(fit.celsius, `${path}.celsius`, 'two temperatures in °C', 2, 2)
    .map((one, index) =>
      faults.number(one, `${path}.celsius[${index}]`, 'a temperature in °C', { from: -100, to: 400 }),
    );
  const source = readSource(fit.source, `${path}.source`, faults);
  return { coefficients, celsius, source } as unknown as TemperatureFit;
}

function readAlternative(item: unknown, path: string, steps: number, faults: Faults): Alternative {
  const unread = faults.object(item, path, 'an alternative { step, pKa, source }', keys.alternative);
  const { step, pKa, source, note } = unread;
  faults.number(step, `${path}.step`, 'the number of a step', {
    from: 1,
    to: Math.max(1, steps),
    integer: true,
  });
  readPKa(pKa, path, faults);
  if (note !== undefined) faults.text(note, `${path}.note`, 'a note', noteLength);
  return { ...unread, source: readSource(source, `${path}.source`, faults) } as unknown as Alternative;
}

function readPKa(pKa: unknown, path: string, faults: Faults): void {
  const [from, to] = protolyteLimits.pKa;
  faults.number(pKa, `${path}.pKa`, 'a pKa', { from, to });
}

function notesOnOrder({ name, steps }: Protolyte): string[] {
  return steps.flatMap(({ pKa }, index) => {
    const before = steps[index - 1];
    if (before === undefined || !(pKa < before.pKa)) return [];
    return [`${name}: pKa ${index + 1} is below pKa ${index}, so the species between them never prevails.`];
  });
}
