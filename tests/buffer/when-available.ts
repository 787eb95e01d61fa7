import * as library from 'protolysis';
import { InputError, pHOf } from 'protolysis';

/** The Davies model (0.3 I, 1962), once the library has models of activity; undefined before. */
export const davies = (library as unknown as Record<string, unknown>).davies;

/** Conditions that the library may not know yet. */
export const conditionsOf = (conditions: Record<string, unknown>): library.Conditions =>
  conditions as library.Conditions;

/** Whether conditions have a temperature. */
export const hasTemperature = (() => {
  try {
    pHOf({ mL: 1, contents: [] }, conditionsOf({ celsius: 20 }));
    return true;
  } catch (error) {
    if (error instanceof InputError) return false;
    throw error;
  }
})();
