// How often a diagnosis is right, for docs/guides/diagnosis.md: npm run study:diagnosis -- 1000, and then the faults that it is for
import { tabulate } from 'protolysis';
import { confusion, type Tried } from './confusion.js';

const [runs = '100', ...faults] = process.argv.slice(2);
const tried =
  faults.length > 0 ? confusion(Number(runs), faults as Tried['fault'][]) : confusion(Number(runs));

const percent = (list: readonly Tried[], is: (each: Tried) => boolean) =>
  list.length === 0 ? null : (100 * list.filter(is).length) / list.length;
const isTold = ({ fault, likely }: Tried) => likely.includes(fault);
const thirdOf = (third: number) => (each: Tried) => Math.min(2, Math.floor(3 * each.size)) === third;

const rows = [...new Set(tried.map(({ fault }) => fault))].map((fault) => {
  const all = tried.filter((each) => each.fault === fault);
  const names = all.reduce((sum, { likely }) => sum + likely.length, 0) / all.length;
  const taken = all.filter((each) => !isTold(each)).map(({ likely }) => likely.join(' or '));
  const most = [...new Set(taken)].sort(
    (a, b) => taken.filter((each) => each === b).length - taken.filter((each) => each === a).length,
  );
  return {
    fault,
    told: percent(all, isTold),
    first: percent(all, ({ likely }) => likely[0] === fault),
    names,
    small: percent(all.filter(thirdOf(0)), isTold),
    middle: percent(all.filter(thirdOf(1)), isTold),
    large: percent(all.filter(thirdOf(2)), isTold),
    'else mostly': most[0] ?? '',
  };
});
const columns = {
  fault: 'text',
  told: 0,
  first: 0,
  names: 2,
  small: 0,
  middle: 0,
  large: 0,
  'else mostly': 'text',
} as const;
console.log(tabulate(rows, columns));
console.log(
  `${runs} runs of each; a diagnosis took ${(tried.reduce((sum, { ms }) => sum + ms, 0) / tried.length).toFixed(0)} ms on average`,
);
