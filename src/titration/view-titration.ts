import { fixed } from '../print-number.js';
import { contentsInLine } from '../solution/view-solution.js';
import type { CurvePoint } from './sampling/curve.js';
import type { Titration } from './titration.js';

/** What is titrated with what, the points and the notes, a line each. @internal */
export function viewTitration(titration: Titration): string {
  const { analyte, titrant } = titration.setup;
  const points = [
    ...titration.equivalencePoints.map((point) => ({ ...point, is: `equivalence, ${point.reaction}` })),
    ...titration.halfEquivalencePoints.map((point) => ({ ...point, is: 'half-equivalence' })),
  ].sort((a, b) => a.mL - b.mL);
  return [
    `titration of ${analyte.mL} mL (${contentsInLine(analyte)}) with ${contentsInLine(titrant)}`,
    `  ${line({ mL: 0, pH: titration.pHAt(0) })}  start`,
    ...points.map((point) => `  ${line(point)}  ${point.is}`),
    ...titration.notes.map((note) => `  note: ${note}`),
  ].join('\n');
}

const line = ({ mL, pH }: Pick<CurvePoint, 'mL' | 'pH'>): string =>
  `${fixed(mL, 2).padStart(6)} mL  pH ${fixed(pH, 2).padStart(5)}`;
