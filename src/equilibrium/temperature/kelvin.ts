/** 0 °C in kelvin. */
export const zeroCelsius = 273.15;

/** The molar gas constant, J/(mol·K); exact since 2019 (SI Brochure, 9th edition). */
export const gasConstant = 8.31446261815324;
