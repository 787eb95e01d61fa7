import { fixed, fourDigits } from '../print-number.js';
import { readSolution } from '../solution/read-solution.js';
import { isStock } from '../solution/solution.js';
import { printFormula } from '../substance/print-formula.js';
import { notesOf, numberOrNull, objectsAt, type Pieces, textAt, textsAt } from './pieces.js';

/** What a solution holds. @internal */
export const solutionPieces: Pieces = (fields, faults) => {
  const solution = readSolution(fields, 'result', faults);
  const { mL, contents, name = contents.length > 0 ? 'solution' : 'water' } = solution;
  const size = isStock(solution) ? `${name}, of no stated volume` : `${fourDigits(mL)} mL of ${name}`;
  return [
    { kind: 'text', text: size },
    {
      kind: 'table',
      rows: contents.map(({ reagent, mmol }) => ({
        substance: reagent.name,
        molar: mmol / mL,
        ...(isStock(solution) ? {} : { mmol }),
      })),
    },
  ];
};

/** Its pH and its species, the prevailing ones first. @internal */
export const equilibriumPieces: Pieces = (fields, faults) => {
  const number = (key: string) => faults.number(fields[key], `result.${key}`, 'a number');
  const [pH = 0, strength = 0, capacity = 0] = ['pH', 'ionicStrength', 'bufferCapacity'].map(number);
  const species = objectsAt(fields.species, 'result.species', faults).map((one, k) => {
    const path = `result.species[${k}]`;
    return {
      species: printFormula(textAt(one, 'formula', path, faults)),
      molar: faults.number(one.molar, `${path}.molar`, 'a concentration'),
      activity: numberOrNull(one, 'activity', path, faults),
      fraction: numberOrNull(one, 'fraction', path, faults),
    };
  });
  return [
    {
      kind: 'text',
      text: `pH ${fixed(pH, 3)}, ionic strength ${fourDigits(strength)} mol/L, buffer capacity ${fourDigits(capacity)} mol/L per pH unit`,
    },
    { kind: 'table', rows: species.sort((a, b) => b.molar - a.molar) },
    notesOf(fields, faults),
  ];
};

/** What is weighed and poured, and the steps in order. @internal */
export const recipePieces: Pieces = (fields, faults) => {
  const parts = objectsAt(fields.parts, 'result.parts', faults).map((part, k) => {
    const path = `result.parts[${k}]`;
    const [grams, mL, mmol] = ['grams', 'mL', 'mmol'].map((key) => numberOrNull(part, key, path, faults));
    return { part: textAt(part, 'name', path, faults), grams, mL, mmol };
  });
  const mL = faults.number(fields.mL, 'result.mL', 'a volume in mL');
  const items = textsAt(fields, 'cautions', faults);
  return [
    { kind: 'text', text: `Recipe for ${fourDigits(mL)} mL` },
    { kind: 'table', rows: parts },
    { kind: 'list', items: textsAt(fields, 'steps', faults), isNumbered: true },
    { kind: 'list', items: items.map((caution) => `Caution: ${caution}`) },
    notesOf(fields, faults),
  ];
};

/** Why there is no recipe. @internal */
export const impossiblePieces: Pieces = (fields, faults) => [
  { kind: 'text', text: `No recipe: ${textAt(fields, 'reason', 'result', faults)}` },
];
