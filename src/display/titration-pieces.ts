import type { Faults } from '../input/faults.js';
import type { Unread } from '../input/safe-read.js';
import { drawTitration } from '../plot/draw-titration.js';
import { readDrawnSetup } from '../plot/read-drawn.js';
import { fixed } from '../print-number.js';
import { makeTitration } from '../titration/make-titration.js';
import { pointsInOrder } from '../titration/points/points-in-order.js';
import type { Titration } from '../titration/titration.js';
import type { ShownPart } from './part.js';
import { notesOf, numberOrNull, objectsAt, type Pieces, textAt } from './pieces.js';

/** A picture that has been drawn already. @internal */
export const picturePieces: Pieces = (fields, faults) => {
  const { svg } = fields;
  const isSvg = typeof svg === 'string' && svg.length < 1e7;
  if (!isSvg) faults.add('wrong-type', 'result.svg', 'the SVG of a picture', svg);
  const title = textAt(fields, 'title', 'result', faults);
  const description = textAt(fields, 'description', 'result', faults);
  return [{ kind: 'picture', picture: { svg: isSvg ? svg : '', title, description } }];
};

/** The curve, and its points in order. @internal */
export const titrationPieces: Pieces = (fields, faults) => {
  const setup = readDrawnSetup(fields, 'result', faults);
  return [
    () => {
      const titration = makeTitration(setup);
      return [
        { kind: 'picture', picture: drawTitration(titration) },
        { kind: 'table', rows: pointsOf(titration) },
        { kind: 'list', items: titration.notes },
      ];
    },
  ];
};

function pointsOf(titration: Titration): readonly object[] {
  const points = pointsInOrder(titration).map(({ reaction, ...point }) => ({
    ...point,
    point: reaction === null ? 'half-equivalence' : 'equivalence',
    reaction,
  }));
  return [{ mL: 0, pH: titration.pHAt(0), point: 'start', reaction: null }, ...points];
}

/** The indicators in order, each with its verdict and reason. @internal */
export const rankingPieces: Pieces = (fields, faults) => [
  ...objectsAt(fields.points, 'result.points', faults).map((point, k) =>
    pointLine(point, `result.points[${k}]`, faults),
  ),
  { kind: 'table', rows: scoresOf(fields.ranking, 'result.ranking', faults) },
  leftOut(fields, faults),
  notesOf(fields, faults),
];

/** The same for each point of a set. @internal */
export const setPieces: Pieces = (fields, faults) => [
  ...objectsAt(fields.points, 'result.points', faults).flatMap((point, k): ShownPart[] => [
    pointLine(point, `result.points[${k}]`, faults),
    { kind: 'table', rows: scoresOf(point.ranking, `result.points[${k}].ranking`, faults) },
  ]),
  leftOut(fields, faults),
  notesOf(fields, faults),
];

function pointLine(point: Unread, path: string, faults: Faults): ShownPart {
  const at = faults.object(point.at, `${path}.at`, 'an equivalence point');
  const mL = faults.number(at.mL, `${path}.at.mL`, 'a volume in mL');
  const pH = faults.number(at.pH, `${path}.at.pH`, 'a pH');
  return { kind: 'text', text: `Point at ${fixed(mL, 2)} mL, pH ${fixed(pH, 2)}` };
}

function scoresOf(value: unknown, path: string, faults: Faults): readonly object[] {
  return objectsAt(value, path, faults).map((score, k) => {
    const here = `${path}[${k}]`;
    const indicator = faults.object(score.indicator, `${here}.indicator`, 'an indicator');
    const error = faults.object(score.titrationError ?? {}, `${here}.titrationError`, 'an error or null');
    const change = faults.object(score.change, `${here}.change`, 'a range { from, to }');
    return {
      indicator: textAt(indicator, 'name', `${here}.indicator`, faults),
      score: faults.number(score.score, `${here}.score`, 'a score', { from: 0, to: 1 }),
      change: {
        from: numberOrNull(change, 'from', `${here}.change`, faults),
        to: numberOrNull(change, 'to', `${here}.change`, faults),
      },
      titrationError: { percent: numberOrNull(error, 'percent', `${here}.titrationError`, faults) },
      verdict: textAt(score, 'verdict', here, faults),
      reason: textAt(score, 'reason', here, faults),
    };
  });
}

const leftOut = (fields: Unread, faults: Faults): ShownPart => ({
  kind: 'list',
  items: objectsAt(fields.leftOut, 'result.leftOut', faults).map((one, k) => {
    const [name, reason] = ['name', 'reason'].map((key) => textAt(one, key, `result.leftOut[${k}]`, faults));
    return `Left out: ${name}, since ${reason}`;
  }),
});
