import { gasConstant, zeroCelsius } from '../equilibrium/temperature/kelvin.js';

/** mV per pH of an ideal probe: ln 10·R·T/F, with F as fixed in the SI of 2019. @internal */
export const nernstSlope = (celsius: number): number =>
  (1000 * Math.LN10 * gasConstant * (celsius + zeroCelsius)) / 96485.33212331;
