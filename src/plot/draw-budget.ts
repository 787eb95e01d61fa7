import { entryOf } from '../entry-of.js';
import { inWords } from '../in-words.js';
import { Faults } from '../input/faults.js';
import type { UncertaintyBudget } from '../measurement/uncertainty/budget.js';
import type { Bars } from './figure.js';
import { layOut } from './lay-out.js';
import type { Picture } from './picture.js';
import { type PlotOptions, plotLimits, readPlotOptions } from './plot-options.js';
import { type PlotWords, say } from './words.js';

/**
 * Where the uncertainty of a result comes from: a bar for each input, as long as its share of the variance, the largest
 * first. Where there are more inputs than `plotLimits.bars`, the last bar holds all the smaller ones together.
 *
 * @param budget - as `uncertaintyBudget` gives it, or a result that holds one, such as that of `assay`
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { estimateWithin, glasswareVolume, uncertaintyBudget } from 'protolysis/measurement';
 * import { drawBudget } from 'protolysis/plot';
 *
 * const molar = uncertaintyBudget(
 *   {
 *     grams: estimateWithin(1.325, { limit: 0.0004, distribution: 'rectangular' }),
 *     purity: estimateWithin(0.9995, { limit: 0.0005, distribution: 'rectangular' }),
 *     flask: glasswareVolume({ kind: 'flask', size: 250 }),
 *   },
 *   ({ grams, purity, flask }) => (1000 * grams * purity) / (105.988 * flask),
 * );
 * drawBudget(molar).description.startsWith('Shares of the variance: purity: 48.0'); // => true
 * ```
 */
export function drawBudget(budget: Pick<UncertaintyBudget, 'contributions'>, options?: PlotOptions): Picture {
  const faults = new Faults('drawBudget');
  const read = readShares(budget, faults);
  const { width, title, words } = readPlotOptions(options, [], faults);
  faults.done();

  const shares = largestOf(read, words);
  const texts = shares.map(({ input, percent }) =>
    say(words.share, { input: entryOf(quantities, input) ?? input, percent: printPercent(percent) }),
  );
  const bars: Bars['bars'] = shares.map(({ percent }, k) => ({ to: percent, text: texts[k] as string }));
  return layOut(
    {
      title: title ?? words.budget,
      description: say(words.describeBudget, { shares: texts.join('; ') }),
      x: { name: words.shareOfVariance, from: 0, to: 100 },
      rows: [{ kind: 'bars', bars }],
      notes: [],
      noRoom: words.noRoom,
    },
    width,
  );
}

/** Of one input, or of several together. */
interface Share {
  readonly input: string;
  readonly percent: number;
}

/** Reads the shares of a budget from a caller's value, noting every fault. @internal */
export function readShares(value: unknown, faults: Faults): readonly Share[] {
  const { contributions } = faults.object(value, 'budget', 'a budget as uncertaintyBudget gives it');
  return faults
    .list(contributions, 'budget.contributions', 'a list of contributions', 1, 1000)
    .map((one, k) => {
      const path = `budget.contributions[${k}]`;
      const { input, percent } = faults.object(one, path, 'a contribution { input, percent }');
      const limits = { from: 0, to: 100 + rounding };
      return {
        input: inWords(faults.text(input, `${path}.input`, 'a name')),
        percent: Math.min(100, faults.number(percent, `${path}.percent`, 'a share in %', limits)),
      };
    });
}

/** What the keys measure that are units: a picture shows no value to which a unit belongs. */
const quantities = { molar: 'concentration', grams: 'mass', mL: 'volume' };

/** By which the share of a single input may pass 100 %: a square of a quotient of doubles. */
const rounding = 1e-9;

/** The largest first; as many as a picture takes, the last of them for all that are left. */
function largestOf(shares: readonly Share[], words: PlotWords): readonly Share[] {
  const sorted = [...shares].sort((a, b) => b.percent - a.percent);
  if (sorted.length <= plotLimits.bars) return sorted;
  const rest = sorted.slice(plotLimits.bars - 1);
  const percent = rest.reduce((sum, one) => sum + one.percent, 0);
  return [
    ...sorted.slice(0, plotLimits.bars - 1),
    { input: say(words.otherInputs, { count: rest.length }), percent: Math.min(100, percent) },
  ];
}

/** To a tenth: what is less, but there, is said to be. */
const printPercent = (percent: number): string =>
  percent > 0 && percent < 0.05 ? '<\u00A00.1' : percent.toFixed(1);
