import { fixed, fourDigits } from '../print-number.js';
import type { LeftOut } from '../substance/left-out.js';
import type { IndicatorScore } from './indicator-score.js';
import type { IndicatorRanking, IndicatorSet, PointToFind, RankingNotes } from './ranking.js';

/** The points, the indicators in order with their reasons, and the notes, a line each. @internal */
export const viewRanking = ({ points, ranking, ...beside }: IndicatorRanking): string =>
  [...points.map(pointLine), ...ranking.map(scoreLine), ...besideLines(beside)].join('\n');

/** The same for each point of a set. @internal */
export const viewSet = ({ points, ...beside }: IndicatorSet): string =>
  [
    ...points.flatMap((point) => [pointLine(point), ...point.ranking.map(scoreLine)]),
    ...besideLines(beside),
  ].join('\n');

const pointLine = ({ at, best }: PointToFind): string =>
  `point at ${fixed(at.mL, 2)} mL, pH ${fixed(at.pH, 2)}; best score possible ${fourDigits(best)}`;

const scoreLine = ({ indicator, score, verdict, reason }: IndicatorScore, k: number): string =>
  `  ${k + 1}. ${indicator.name}: ${fixed(score, 3)}, ${verdict}. ${reason}`;

const besideLines = ({ leftOut, notes }: RankingNotes): string[] => [
  ...leftOut.map(({ name, reason }: LeftOut) => `  left out: ${name}, since ${reason}`),
  ...notes.map((note) => `  note: ${note}`),
];
