import { burettes, flasks, pipettes, type Vessel } from '../catalogue/glassware.js';
import { waters } from '../catalogue/waters.js';
import { readConditions, readGas } from '../equilibrium/conditions.js';
import { at, type Faults } from '../input/faults.js';
import { readConflicts } from '../solution/conflicting-constants.js';
import { readSolution } from '../solution/read-solution.js';
import { readReagent } from '../substance/reagent.js';
import { readGlass, readVessel } from './read-glassware.js';
import { sampleDefaults } from './sample-plan.js';

/** A request for a sample that has been read. */
export type ReadSample = ReturnType<typeof readSample>;

const keys = [
  'sample',
  'titrant',
  'mL',
  'beaker',
  'water',
  'burette',
  'glass',
  'part',
  'point',
  'weighing',
  'reading',
  'conditions',
] as const;

/** Reads a request for a sample from a caller's value, noting every fault. @internal */
export function readSample(value: unknown, faults: Faults) {
  const unread = faults.object(value, 'request', 'a request { sample, titrant }', keys);
  const optional = (key: 'burette' | 'weighing' | 'reading', what: string, limits: object): number =>
    unread[key] === undefined ? sampleDefaults[key] : faults.number(unread[key], key, what, limits);
  const sample = readWeighed(unread.sample, faults);
  const titrant = readTitrant(unread.titrant, faults);
  const water = unread.water === undefined ? waters.inAir : readSolution(unread.water, 'water', faults);
  if ((sample.grams === null) === (titrant.molar === null))
    faults.add(
      sample.grams === null ? 'missing' : 'conflict',
      'request',
      'one of sample.grams and titrant.molar: the other is planned',
      undefined,
      sample.grams === null ? 'without grams and without molar' : 'given both grams and molar',
    );
  const inUse = readConditions(unread.conditions, 'conditions', faults);
  if (!faults.any) {
    const given = [
      { reagent: sample.reagent, path: 'sample.reagent' },
      { reagent: titrant.reagent, path: 'titrant.reagent' },
      ...water.contents.map(({ reagent }, k) => ({ reagent, path: `water.contents[${k}].reagent` })),
    ];
    readConflicts(given, faults);
    readGas([{ contents: given }], inUse, 'conditions', faults);
  }
  const glass = readGlass(unread.glass, sampleDefaults.glass, faults);
  const burette = optional('burette', 'a volume in mL', { from: 0.1, to: 1e4 });
  return {
    sample,
    titrant,
    water,
    mL: readVolume(unread.mL, unread.beaker, sample.aliquot, faults),
    burette,
    buretteVessel: burettes.find(({ mL }) => mL === burette) ?? null,
    glass,
    part: readPart(unread.part, faults),
    point:
      unread.point === undefined
        ? null
        : faults.number(unread.point, 'point', 'the number of a point', { from: 1, to: 100, integer: true }),
    weighing: optional('weighing', 'an uncertainty in mg', { from: 0, to: 1e5 }),
    reading: optional('reading', 'an uncertainty in mL', { from: 0, to: 1e3 }),
    inUse,
  };
}

/** A number that may be left out. */
const orNull = (value: unknown, path: string, what: string, limits: object, faults: Faults) =>
  value === undefined ? null : faults.number(value, path, what, limits);

function readWeighed(value: unknown, faults: Faults) {
  const unread = faults.object(value, 'sample', 'a sample { reagent, purity, grams }', [
    'reagent',
    'purity',
    'grams',
    'aliquot',
  ]);
  const before = faults.count;
  const reagent = readReagent(unread.reagent, 'sample.reagent', faults);
  if (faults.count === before && reagent.molarMass === undefined)
    faults.add('missing', 'sample.reagent.molarMass', 'a reagent with a molar mass or a formula', undefined);
  const purity = orNull(unread.purity, 'sample.purity', 'a mass fraction', { from: 0.01, to: 1 }, faults);
  return {
    reagent,
    molarMass: reagent.molarMass ?? 1,
    purity: purity ?? 1,
    grams: orNull(unread.grams, 'sample.grams', 'a mass in g', { from: 1e-6, to: 1e6 }, faults),
    aliquot: unread.aliquot === undefined ? null : readAliquot(unread.aliquot, faults),
  };
}

/** mol/L: no solution of a usual titrant is stronger. @internal */
export const strongestTitrant = 20;

function readTitrant(value: unknown, faults: Faults) {
  const unread = faults.object(value, 'titrant', 'a titrant { reagent, molar }', ['reagent', 'molar']);
  const limits = { from: 1e-6, to: strongestTitrant };
  return {
    reagent: readReagent(unread.reagent, 'titrant.reagent', faults),
    molar: orNull(unread.molar, 'titrant.molar', 'a concentration in mol/L', limits, faults),
  };
}

/** The flask and the pipette of an aliquot. */
interface AliquotVessels {
  readonly flask: Vessel;
  readonly pipette: Vessel;
}

function readAliquot(value: unknown, faults: Faults): AliquotVessels | null {
  const path = 'sample.aliquot';
  const unread = faults.object(value, path, 'an aliquot { flask, pipette }', ['flask', 'pipette']);
  const flask = readVessel(unread.flask, `${path}.flask`, flasks, faults);
  const pipette = readVessel(unread.pipette, `${path}.pipette`, pipettes, faults);
  if (!flask || !pipette) return null;
  if (!(pipette.mL < flask.mL))
    faults.add('conflict', `${path}.pipette`, `a volume below the ${flask.mL} mL of the flask`, pipette.mL);
  return { flask, pipette };
}

/** The volume in the beaker, mL. */
function readVolume(mL: unknown, beaker: unknown, aliquot: AliquotVessels | null, faults: Faults): number {
  if (mL !== undefined && beaker !== undefined)
    faults.add('conflict', 'beaker', 'either mL or beaker', undefined, 'given beside mL');
  const read = beaker === undefined ? readML(mL, faults) : volumeInBeaker(beaker, faults);
  if (!faults.any && aliquot && read < aliquot.pipette.mL)
    faults.add(
      'conflict',
      beaker === undefined ? 'mL' : 'beaker',
      `a volume that holds the aliquot of ${aliquot.pipette.mL} mL`,
      undefined,
      `${Number(read.toPrecision(4))} mL`,
    );
  return read;
}

const readML = (mL: unknown, faults: Faults): number =>
  mL === undefined ? sampleDefaults.mL : faults.number(mL, 'mL', 'a volume in mL', { from: 0.1, to: 1e6 });

/** π/4·d²·h, mL. */
function volumeInBeaker(value: unknown, faults: Faults): number {
  const unread = faults.object(value, 'beaker', 'a beaker { diameter, depth }', ['diameter', 'depth']);
  const read = (key: 'diameter' | 'depth') =>
    faults.number(unread[key], at('beaker', key), 'a length in mm', { from: 5, to: 500 });
  return ((Math.PI / 4) * read('diameter') ** 2 * read('depth')) / 1000;
}

function readPart(value: unknown, faults: Faults): { from: number; to: number } {
  if (value === undefined) return sampleDefaults.part;
  const unread = faults.object(value, 'part', 'a part { from, to }', ['from', 'to']);
  const before = faults.count;
  const limits = { from: 0.01, to: 1 };
  const from = faults.number(unread.from, 'part.from', 'a share of the burette', limits);
  const to = faults.number(unread.to, 'part.to', 'a share of the burette', limits);
  if (faults.count === before && !(to >= from))
    faults.add('conflict', 'part.to', 'a share not below `from`', to);
  return { from, to };
}
