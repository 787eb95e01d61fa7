import { cataloguedIndicator } from '../catalogued.js';
import { bandsInMixtures } from './bands-from-memory.js';
import { sydney, wikipedia2007 } from './handbooks.js';
import {
  bromocresolGreenInMixture,
  cresolRedInMixture,
  methylRedInMixture,
  thymolBlueInMixture,
} from './mixed-parts.js';

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
  // The bands of the parts are in the molar ratio of `stock`, 3·0.1/698.0 to 0.2/269.3 or 1 to 1.73; the amounts give
  // the usual strength of colour.
  parts: [
    { indicator: bromocresolGreenInMixture, amount: 0.6 },
    { indicator: methylRedInMixture, amount: 0.6 },
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
  notes: ['At its change point it is grey, since the colours of its parts are nearly complementary there.'],
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
  pKIn: 5.1,
  pKInSource: sydney,
  // The bands of methyl red, and those of methylene blue, which does not change.
  bands: {
    acid: [
      { nm: 523, width: 85, absorbance: 1.1 },
      { nm: 664, width: 45, absorbance: 0.6 },
      { nm: 612, width: 60, absorbance: 0.264 },
    ],
    base: [
      { nm: 430, width: 90, absorbance: 0.51 },
      { nm: 664, width: 45, absorbance: 0.6 },
      { nm: 612, width: 60, absorbance: 0.264 },
    ],
    source: bandsInMixtures,
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
  notes: [
    'pKIn: that of methyl red. It turns above it, where the red that is left is as strong as the blue.',
  ],
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
  // In the molar ratio of `stock`, 0.1/382.4 to 3·0.1/466.6 or 1 to 2.46, with 0.7 of the absorptivity of cresol red for
  // thymol blue, at the usual strength of colour.
  parts: [
    { indicator: cresolRedInMixture, amount: 0.316 },
    { indicator: thymolBlueInMixture, amount: 0.582 },
  ],
  stock: {
    text: '1 part 0.1 % cresol red + 3 parts 0.1 % thymol blue, both in water as sodium salts',
    source: { kind: 'fromMemory', work: 'kolthoff-1937', note: 'table of mixed indicators' },
  },
  notes: ['For carbonate on its way to hydrogencarbonate, beside a reference tube of the same pH.'],
});
