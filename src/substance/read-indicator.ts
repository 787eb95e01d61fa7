import { at, type Faults } from '../input/faults.js';
import { noteLength, readSource } from '../source.js';
import { colourless, type Indicator, indicatorLimits } from './indicator.js';
import { readReason } from './read-reason.js';
import { readAlternatives, readExponent, readPH, readTransition } from './read-transition.js';
import { wanted } from './wanted.js';

const keys = {
  indicator: [
    'id',
    'name',
    'transition',
    'pKIn',
    'pKInSource',
    'acidColour',
    'baseColour',
    'source',
    'titrationExponent',
    'bands',
    'parts',
    'stock',
    'alternatives',
    'hazard',
    'veryHighConcern',
    'notForUse',
    'notes',
  ],
  band: ['nm', 'width', 'absorbance'],
} as const;

/** Reads an indicator from a caller's value, noting every fault. @internal */
export function readIndicator(value: unknown, path: string, faults: Faults): Indicator {
  return readWithin(value, path, faults, 1);
}

/** `levels` is the depth to which mixtures of mixtures are read, so that a mixture that holds itself ends. */
function readWithin(value: unknown, path: string, faults: Faults, levels: number): Indicator {
  const unread = faults.object(
    value,
    path,
    wanted(value, 'an indicator', 'indicators', 'methylOrange'),
    keys.indicator,
  );
  faults.text(unread.id, at(path, 'id'), 'an id');
  faults.text(unread.name, at(path, 'name'), 'a name');
  faults.text(unread.acidColour, at(path, 'acidColour'), 'a colour');
  faults.text(unread.baseColour, at(path, 'baseColour'), 'a colour');
  if (unread.acidColour === colourless && unread.baseColour === colourless)
    faults.add('conflict', at(path, 'baseColour'), 'a colour on at least one side', unread.baseColour);
  const oneColour = unread.acidColour === colourless || unread.baseColour === colourless;
  if (oneColour && unread.titrationExponent !== undefined)
    faults.add(
      'conflict',
      at(path, 'titrationExponent'),
      'none for a one-colour indicator, which is called where its colour just shows',
      unread.titrationExponent,
    );
  if (unread.parts !== undefined && unread.bands !== undefined)
    faults.add('conflict', at(path, 'parts'), 'either bands or parts', unread.parts);

  const transition = readTransition(unread.transition, at(path, 'transition'), faults);
  const optional = (key: keyof Indicator, read: (item: unknown, here: string) => unknown) =>
    unread[key] === undefined ? {} : { [key]: read(unread[key], at(path, key)) };
  const text = (item: unknown, here: string) => faults.text(item, here, 'a text', noteLength);
  return {
    ...unread,
    transition,
    source: readSource(unread.source, at(path, 'source'), faults),
    ...optional('pKIn', (item, here) => readPH(item, here, 'a pKIn', faults)),
    ...optional('pKInSource', (item, here) => readSource(item, here, faults)),
    ...optional('titrationExponent', (item, here) => readExponent(item, here, transition, faults)),
    ...optional('bands', (item, here) => readBands(item, here, faults)),
    ...optional('parts', (item, here) => readParts(item, here, faults, levels)),
    ...optional('stock', (item, here) => readStock(item, here, faults)),
    ...optional('alternatives', (item, here) => readAlternatives(item, here, faults)),
    ...optional('hazard', text),
    ...optional('veryHighConcern', (item, here) => readSource(item, here, faults)),
    ...optional('notForUse', (item, here) => readReason(item, here, faults)),
    ...optional('notes', (item, here) =>
      faults.list(item, here, 'a list of notes', 0, 100).map((note, k) => text(note, `${here}[${k}]`)),
    ),
  } as unknown as Indicator;
}

function readBands(value: unknown, path: string, faults: Faults) {
  const unread = faults.object(value, path, 'bands { acid, base, source }', ['acid', 'base', 'source']);
  const [from, to] = indicatorLimits.nm;
  const form = (key: 'acid' | 'base') =>
    faults.list(unread[key], `${path}.${key}`, 'a list of bands', 0, 20).map((item, k) => {
      const here = `${path}.${key}[${k}]`;
      const band = faults.object(item, here, 'a band { nm, width, absorbance }', keys.band);
      return {
        nm: faults.number(band.nm, `${here}.nm`, 'a wavelength in nm', { from, to }),
        width: faults.number(band.width, `${here}.width`, 'a width in nm', { from: 1, to: 500 }),
        absorbance: faults.number(band.absorbance, `${here}.absorbance`, 'an absorbance', {
          from: 0,
          to: indicatorLimits.absorbance,
        }),
      };
    });
  return {
    acid: form('acid'),
    base: form('base'),
    source: readSource(unread.source, `${path}.source`, faults),
  };
}

function readParts(value: unknown, path: string, faults: Faults, levels: number) {
  if (levels === 0) {
    faults.add('out-of-range', path, 'parts that are not mixtures themselves', value);
    return [];
  }
  const what = 'a list of { indicator, amount }';
  return faults.list(value, path, what, 1, indicatorLimits.parts).map((item, k) => {
    const here = `${path}[${k}]`;
    const part = faults.object(item, here, 'a part { indicator, amount }', ['indicator', 'amount']);
    return {
      indicator: readWithin(part.indicator, `${here}.indicator`, faults, levels - 1),
      amount: faults.number(part.amount, `${here}.amount`, 'an amount, 1 for the usual one', {
        above: 0,
        to: 100,
      }),
    };
  });
}

function readStock(value: unknown, path: string, faults: Faults) {
  const unread = faults.object(value, path, 'a stock solution { text, source }', ['text', 'source']);
  return {
    text: faults.text(unread.text, `${path}.text`, 'a text', noteLength),
    source: readSource(unread.source, `${path}.source`, faults),
  };
}
