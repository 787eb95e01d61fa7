import type { Faults } from '../input/faults.js';
import { noteLength, readSource } from '../source.js';
import { type Alternative, protolyteLimits, type Step, type TemperatureFit } from './protolyte.js';

const keys = [
  'pKa',
  'dH',
  'dCp',
  'standardUncertainty',
  'log10K',
  'ionicStrength',
  'convention',
  'source',
  'thermalSource',
] as const;

/** The numbers that a step may carry beside its pKa. */
const numbersOfStep = [
  ['dH', 'an enthalpy in kJ/mol', { from: -1000, to: 1000 }],
  ['dCp', 'a heat capacity in J/(mol K)', { from: -1e4, to: 1e4 }],
  ['standardUncertainty', 'an uncertainty', { from: 0, to: 10 }],
  ['ionicStrength', 'an ionic strength in mol/L', { from: 0, to: 100 }],
] as const;

/** Reads the loss of one proton, noting every fault. @internal */
export function readStep(item: unknown, path: string, faults: Faults): Step {
  const step = faults.object(item, path, 'a step { pKa, source }', keys);
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
  const fit = faults.object(item, path, 'a fit { coefficients, celsius, source }', [
    'coefficients',
    'celsius',
    'source',
  ]);
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

/** Reads another evaluation of one of so many steps. @internal */
export function readAlternative(item: unknown, path: string, steps: number, faults: Faults): Alternative {
  const unread = faults.object(item, path, 'an alternative { step, pKa, source }', [
    'step',
    'pKa',
    'source',
    'note',
  ]);
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
