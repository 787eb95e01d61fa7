import { at, type Faults } from '../errors.js';
import { noteLength, readSource } from '../source.js';
import { colourless, type Indicator, indicatorLimits, type Transition } from './indicator.js';

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
    'notes',
  ],
  transition: ['from', 'to'],
  band: ['nm', 'width', 'absorbance'],
} as const;

/** Reads an indicator from a caller's value, noting every fault. @internal */
export function readIndicator(value: unknown, path: string, faults: Faults): Indicator {
  return readWithin(value, path, faults, 1);
}

/** `levels`: how deep mixtures of mixtures may still go; a mixture that holds itself ends here. */
function readWithin(value: unknown, path: string, faults: Faults, levels: number): Indicator {
  const unread = faults.object(value, path, 'an indicator as defineIndicator returns it', keys.indicator);
  faults.text(unread.id, at(path, 'id'), 'an id');
  faults.text(unread.name, at(path, 'name'), 'a name');
  faults.text(unread.acidColour, at(path, 'acidColour'), 'a colour');
  faults.text(unread.baseColour, at(path, 'baseColour'), 'a colour');
  if (unread.acidColour === colourless && unread.baseColour === colourless)
    faults.add('conflict', at(path, 'baseColour'), 'a colour on at least one side', unread.baseColour);
  readSource(unread.source, at(path, 'source'), faults);
  const transition = readTransition(unread.transition, at(path, 'transition'), keys.transition, faults);

  if (unread.pKIn !== undefined) readPH(unread.pKIn, at(path, 'pKIn'), 'a pKIn', faults);
  if (unread.pKInSource !== undefined) readSource(unread.pKInSource, at(path, 'pKInSource'), faults);
  if (unread.titrationExponent !== undefined)
    readExponent(unread, at(path, 'titrationExponent'), transition, faults);
  if (unread.bands !== undefined) readBands(unread.bands, at(path, 'bands'), faults);
  if (unread.parts !== undefined) readParts(unread.parts, at(path, 'parts'), faults, levels);
  if (unread.parts !== undefined && unread.bands !== undefined)
    faults.add('conflict', at(path, 'parts'), 'either bands or parts', unread.parts);
  if (unread.stock !== undefined) {
    const here = at(path, 'stock');
    const stock = faults.object(unread.stock, here, 'a stock solution { text, source }', ['text', 'source']);
    faults.text(stock.text, `${here}.text`, 'a text', noteLength);
    readSource(stock.source, `${here}.source`, faults);
  }
  if (unread.alternatives !== undefined)
    readAlternatives(unread.alternatives, at(path, 'alternatives'), faults);
  if (unread.hazard !== undefined) faults.text(unread.hazard, at(path, 'hazard'), 'a text', noteLength);
  if (unread.notes !== undefined) {
    const notes = faults.list(unread.notes, at(path, 'notes'), 'a list of notes', 0, 100);
    for (const [k, note] of notes.entries())
      faults.text(note, `${at(path, 'notes')}[${k}]`, 'a note', noteLength);
  }
  return value as Indicator;
}

function readPH(value: unknown, path: string, what: string, faults: Faults): number {
  const [from, to] = indicatorLimits.pH;
  return faults.number(value, path, what, { from, to });
}

function readTransition(
  value: unknown,
  path: string,
  allowed: readonly string[],
  faults: Faults,
): Transition | undefined {
  const before = faults.count;
  const unread = faults.object(value, path, 'a transition { from, to }', allowed);
  const from = readPH(unread.from, `${path}.from`, 'a pH', faults);
  const to = readPH(unread.to, `${path}.to`, 'a pH', faults);
  if (faults.count > before || unread.from === undefined || unread.to === undefined) return undefined;
  if (!(to - from >= narrowest))
    faults.add('conflict', `${path}.to`, `a pH at least ${narrowest} above \`from\``, to);
  return { from, to };
}

/** A change over less than this would be one that nobody could see. */
const narrowest = 0.001;

function readExponent(
  { titrationExponent, acidColour, baseColour }: Readonly<Record<string, unknown>>,
  path: string,
  transition: Transition | undefined,
  faults: Faults,
): void {
  const unread = faults.object(titrationExponent, path, 'a titration exponent { pH, source }', [
    'pH',
    'source',
  ]);
  if (transition)
    faults.number(unread.pH, `${path}.pH`, 'a pH inside the transition', {
      from: transition.from,
      to: transition.to,
    });
  readSource(unread.source, `${path}.source`, faults);
  if (acidColour === colourless || baseColour === colourless)
    faults.add(
      'conflict',
      path,
      'none for a one-colour indicator, which is called where its colour just shows',
      titrationExponent,
    );
}

function readBands(value: unknown, path: string, faults: Faults): void {
  const unread = faults.object(value, path, 'bands { acid, base, source }', ['acid', 'base', 'source']);
  readSource(unread.source, `${path}.source`, faults);
  const [from, to] = indicatorLimits.nm;
  for (const form of ['acid', 'base'] as const)
    for (const [k, item] of faults
      .list(unread[form], `${path}.${form}`, 'a list of bands', 0, 20)
      .entries()) {
      const here = `${path}.${form}[${k}]`;
      const band = faults.object(item, here, 'a band { nm, width, absorbance }', keys.band);
      faults.number(band.nm, `${here}.nm`, 'a wavelength in nm', { from, to });
      faults.number(band.width, `${here}.width`, 'a width in nm', { from: 1, to: 500 });
      faults.number(band.absorbance, `${here}.absorbance`, 'an absorbance', {
        from: 0,
        to: indicatorLimits.absorbance,
      });
    }
}

function readParts(value: unknown, path: string, faults: Faults, levels: number): void {
  if (levels === 0) {
    faults.add('out-of-range', path, 'parts that are not mixtures themselves', value);
    return;
  }
  const what = 'a list of { indicator, amount }';
  for (const [k, item] of faults.list(value, path, what, 1, indicatorLimits.parts).entries()) {
    const part = faults.object(item, `${path}[${k}]`, 'a part { indicator, amount }', [
      'indicator',
      'amount',
    ]);
    readWithin(part.indicator, `${path}[${k}].indicator`, faults, levels - 1);
    faults.number(part.amount, `${path}[${k}].amount`, 'an amount, 1 for the usual one', {
      above: 0,
      to: 100,
    });
  }
}

function readAlternatives(value: unknown, path: string, faults: Faults): void {
  const unread = faults.object(value, path, 'alternatives { transitions, pKIns }', ['transitions', 'pKIns']);
  const list = (key: string): [unknown, string][] => {
    if (unread[key] === undefined) return [];
    const items = faults.list(unread[key], `${path}.${key}`, 'a list', 0, 100);
    return Array.from(items, (item, k) => [item, `${path}.${key}[${k}]`]);
  };
  for (const [item, here] of list('transitions')) {
    readTransition(item, here, [...keys.transition, 'source'], faults);
    readSource((item as { source?: unknown } | null | undefined)?.source, `${here}.source`, faults);
  }
  for (const [item, here] of list('pKIns')) {
    const one = faults.object(item, here, 'a value { pKIn, source }', ['pKIn', 'source', 'note']);
    readPH(one.pKIn, `${here}.pKIn`, 'a pKIn', faults);
    readSource(one.source, `${here}.source`, faults);
    if (one.note !== undefined) faults.text(one.note, `${here}.note`, 'a note', noteLength);
  }
}
