import { at, type Faults } from '../input/faults.js';
import { noteLength, readSource } from '../source.js';
import { type Protolyte, protolyteLimits, type Species } from './protolyte.js';
import { readReason } from './read-reason.js';
import { readAlternative, readStep } from './read-step.js';
import { readSparinglySoluble } from './sparingly-soluble.js';
import { wanted } from './wanted.js';

const keys = [
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
] as const;

/** Reads a protolyte from a caller's value, noting every fault. @internal */
export function readProtolyte(value: unknown, path: string, faults: Faults): Protolyte {
  const unread = faults.object(value, path, wanted(value, 'a protolyte', 'acids', 'carbonic'), keys);
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

function readSpecies(species: readonly unknown[], path: string, faults: Faults): Species[] {
  const formulas = new Set<unknown>();
  let before: unknown;
  return species.map((item, index) => {
    const unread = faults.object(item, `${path}[${index}]`, 'a species { formula, charge }', [
      'formula',
      'charge',
    ]);
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
