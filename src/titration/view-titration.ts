import { fixed } from '../print-number.js';
import { contentsInLine } from '../solution/view-solution.js';
import { pointsInOrder } from './points/points-in-order.js';
import type { CurvePoint } from './sampling/curve.js';
import type { Titration } from './titration.js';

/** What is titrated with what, the points and the notes, a line each. @internal */
export function viewTitration(titration: Titration): string {
  const { analyte, titrant } = titration.setup;
  return [
    `titration of ${analyte.mL} mL (${contentsInLine(analyte)}) with ${contentsInLine(titrant)}`,
    `  ${line({ mL: 0, pH: titration.pHAt(0) })}  start`,
    ...pointsInOrder(titration).map(
      ({ reaction, ...point }) =>
        `  ${line(point)}  ${reaction === null ? 'half-equivalence' : `equivalence, ${reaction}`}`,
    ),
    ...titration.notes.map((note) => `  note: ${note}`),
  ].join('\n');
}

const line = ({ mL, pH }: Pick<CurvePoint, 'mL' | 'pH'>): string =>
  `${fixed(mL, 2).padStart(6)} mL  pH ${fixed(pH, 2).padStart(5)}`;
