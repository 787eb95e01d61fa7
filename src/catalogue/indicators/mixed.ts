import { cataloguedIndicator } from '../catalogued.js';
import { methylRed } from './azo-dyes.js';
import { wikipedia2007 } from './handbooks.js';
import { bromocresolGreen } from './sulfonephthaleins.js';

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
