// A worker's share of the sweep: the pH of some curves, as one array that is handed over rather than copied.
import { move } from 'piscina';
import { pHsOfCurves } from '../curves.mjs';

export default (chunk) => move(pHsOfCurves(chunk));
