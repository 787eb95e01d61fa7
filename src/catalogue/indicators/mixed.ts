import { cataloguedIndicator } from '../catalogued.js';
import { methylRed } from './azo-dyes.js';
import { bandsFromMemory } from './bands-from-memory.js';
import { wikipedia2007 } from './handbooks.js';
import { bromocresolGreen, cresolRed, thymolBlue } from './sulfonephthaleins.js';

/** Methyl red + bromocresol green (mixed), red to green. */
export const methylRedBromocresolGreen = /*#__PURE__*/ cataloguedIndicator({
  id: 'methylRedBromocresolGreen',
  name: 'methyl red + bromocresol green (mixed)',
  transition: { from: 4.5, to: 5.2 },
  acidColour: 'red',
  baseColour: 'green',
  source: wikipedia2007,
  titrationExponent: {
    pH: 5.1,
    source: {
      kind: 'fromMemory',
      work: 'kolthoff-1937',
      note: 'table of mixed indicators: changes at pH 5.1, grey there',
    },
  },
  // In the molar ratio of `stock`, 3·0.1/698.0 to 0.2/269.3, at about the usual strength of colour.
  parts: [
    { indicator: bromocresolGreen, amount: 0.5 },
    { indicator: methylRed, amount: 0.86 },
  ],
  stock: {
    text: '3 parts 0.1 % bromocresol green in ethanol + 1 part 0.2 % methyl red in ethanol',
    source: {
      kind: 'fromMemory',
      work: 'kolthoff-1937',
      note: 'ISO and Standard Methods use the same mixture in other ratios',
    },
  },
  hazard: 'The stock solution is flammable alcohol. See the safety data sheet.',
  notes: [
    'At its change point it is called grey, since the colours of its parts are nearly complementary there; predicted colours pass through a dull olive.',
  ],
});

/** Methyl red + methylene blue (mixed, Tashiro's indicator), red-violet to green. */
export const methylRedMethyleneBlue = /*#__PURE__*/ cataloguedIndicator({
  id: 'methylRedMethyleneBlue',
  name: 'methyl red + methylene blue (mixed)',
  transition: { from: 5.2, to: 5.6 },
  acidColour: 'red-violet',
  baseColour: 'green',
  source: {
    kind: 'fromMemory',
    work: 'kolthoff-1937',
    note: 'table of mixed indicators: red-violet at pH 5.2, dirty blue at 5.4, green at 5.6',
  },
  titrationExponent: {
    pH: 5.4,
    source: {
      kind: 'fromMemory',
      work: 'kolthoff-1937',
      note: 'table of mixed indicators: changes at pH 5.4',
    },
  },
  // The bands of methyl red, and the band of methylene blue, which does not change.
  bands: {
    acid: [
      { nm: 523, width: 80, absorbance: 1.1 },
      { nm: 664, width: 45, absorbance: 0.8 },
      { nm: 612, width: 60, absorbance: 0.35 },
    ],
    base: [
      { nm: 430, width: 95, absorbance: 0.65 },
      { nm: 664, width: 45, absorbance: 0.8 },
      { nm: 612, width: 60, absorbance: 0.35 },
    ],
    source: bandsFromMemory,
  },
  stock: {
    text: 'equal parts of 0.2 % methyl red and 0.1 % methylene blue, both in ethanol',
    source: {
      kind: 'fromMemory',
      work: 'kolthoff-1937',
      note: 'table of mixed indicators; kept in a brown bottle',
    },
  },
  hazard:
    'The stock solution is flammable alcohol. Methylene blue is harmful if swallowed. See the safety data sheet.',
});

/** Cresol red + thymol blue (mixed), yellow to violet. */
export const cresolRedThymolBlue = /*#__PURE__*/ cataloguedIndicator({
  id: 'cresolRedThymolBlue',
  name: 'cresol red + thymol blue (mixed)',
  transition: { from: 8.2, to: 8.4 },
  acidColour: 'yellow',
  baseColour: 'violet',
  source: {
    kind: 'fromMemory',
    work: 'kolthoff-1937',
    note: 'table of mixed indicators: rose at pH 8.2, distinctly violet at 8.4',
  },
  titrationExponent: {
    pH: 8.3,
    source: {
      kind: 'fromMemory',
      work: 'kolthoff-1937',
      note: 'table of mixed indicators: changes at pH 8.3',
    },
  },
  // In the molar ratio of `stock`, 0.1/382.4 to 3·0.1/466.6, at about the usual strength of colour.
  parts: [
    { indicator: cresolRed, amount: 0.39 },
    { indicator: thymolBlue, amount: 0.97 },
  ],
  stock: {
    text: '1 part 0.1 % cresol red + 3 parts 0.1 % thymol blue, both in water as sodium salts',
    source: { kind: 'fromMemory', work: 'kolthoff-1937', note: 'table of mixed indicators' },
  },
  notes: [
    'For carbonate on its way to hydrogencarbonate, beside a reference tube of the same pH.',
    'Predicted colours stay yellow up to pH 8.4 and turn blue; the words of the trade are rose at 8.2 and violet at 8.4.',
  ],
});
