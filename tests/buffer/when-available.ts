import * as library from 'protolysis';
import { InputError, pHOf } from 'protolysis';

/** Models of activity, once the library has them; undefined before. */
const models = library as unknown as Record<string, unknown>;
export const { davies, batesGuggenheim } = models;

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
