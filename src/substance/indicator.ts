import { at, Faults } from '../errors.js';
import { noteLength, readSource, type Source } from '../source.js';

/** A range of pH over which an indicator changes, as a work prints it. */
export interface Transition {
  readonly from: number;
  readonly to: number;
}

/** A band in the spectrum of one form: a Gaussian of wavelength. */
export interface Band {
  /** Where it absorbs most, nm. */
  readonly nm: number;
  /** Full width at half height, nm. */
  readonly width: number;
  /** Absorbance at its top in the flask, at the usual amount of indicator and with all of it in this form. */
  readonly absorbance: number;
}

/** The spectra of the two forms, for predicting colours. An empty list is a colourless form. */
export interface Bands {
  readonly acid: readonly Band[];
  readonly base: readonly Band[];
  readonly source: Source;
}

/** The pH at which a titration with this indicator is called. */
export interface TitrationExponent {
  readonly pH: number;
  readonly source: Source;
}

/** One indicator of a mixture: how much of it, 1 for the usual amount. */
export interface Part {
  readonly indicator: Indicator;
  readonly amount: number;
}

/** What other works say, kept beside the values in use. */
export interface IndicatorAlternatives {
  readonly transitions?: readonly (Transition & { readonly source: Source })[];
  readonly pKIns?: readonly { readonly pKIn: number; readonly source: Source; readonly note?: string }[];
}

/** An acid–base indicator. */
export interface Indicator {
  readonly id: string;
  readonly name: string;
  /** The range of pH over which it changes. */
  readonly transition: Transition;
  /** −log10 of its acidity constant; left out, colours take the middle of the transition. */
  readonly pKIn?: number;
  /** Of pKIn, where it differs from `source`. */
  readonly pKInSource?: Source;
  /** In plain words, such as `yellow` or `blue-violet`; `colourless` on one side makes it a one-colour indicator. */
  readonly acidColour: string;
  readonly baseColour: string;
  /** Of the transition. */
  readonly source: Source;
  /** Where a two-colour indicator is not called in the middle of its range. */
  readonly titrationExponent?: TitrationExponent;
  /** For predicting colours; left out, the bands follow from `parts` or from the names of the colours. */
  readonly bands?: Bands;
  /** What a mixed indicator is mixed from, for its colours; the transition is that of the mixture. */
  readonly parts?: readonly Part[];
  /** How the solution in the dropping bottle is made. */
  readonly stock?: { readonly text: string; readonly source: Source };
  readonly alternatives?: IndicatorAlternatives;
  /** The usual cautions, in plain words; the safety data sheet of the bottle comes first. */
  readonly hazard?: string;
  readonly notes?: readonly string[];
}

/** Limits of an indicator: pH of its range and pKIn, the depth of its colours, the parts of a mixture. */
export const indicatorLimits = { pH: [-2, 16], nm: [200, 900], absorbance: 10, parts: 10 } as const;

/**
 * Defines an indicator.
 *
 * @param indicator - a transition from a lower to a higher pH, and two colours of which at most one is `colourless`
 * @returns the same data, plain and as good after a trip through JSON
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { defineIndicator } from 'protolysis';
 *
 * const redCabbage = defineIndicator({
 *   id: 'redCabbage',
 *   name: 'red cabbage juice (first change)',
 *   transition: { from: 3, to: 6 },
 *   acidColour: 'red',
 *   baseColour: 'violet',
 *   source: { kind: 'commonPractice', note: 'broad; differs from cabbage to cabbage' },
 * });
 * redCabbage.transition.to; // => 6
 * ```
 */
export function defineIndicator(indicator: Indicator): Indicator {
  const faults = new Faults('defineIndicator');
  readIndicator(indicator, '', faults);
  faults.done();
  return indicator;
}

/** The word for a form without colour. */
export const colourless = 'colourless';

/** Which form of an indicator has no colour; undefined where both have one. @internal */
export function colourlessForm({ acidColour, baseColour }: Indicator): 'acid' | 'base' | undefined {
  if (acidColour === colourless) return 'acid';
  return baseColour === colourless ? 'base' : undefined;
}

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
