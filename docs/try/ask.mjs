import { davies, findById, ideal, indicators, makeSolution, reagents, titrate } from 'protolysis';

/** @typedef {{ titration: import('protolysis').Titration, indicator: import('protolysis').Indicator | null }} Asked */
/** @typedef {{ field: string, given: string, wanted: string }} Fault */

/**
 * The titration and indicator that the fields ask for, or what is wrong with which field.
 *
 * @param {FormData} fields
 * @returns {{ asked: Asked, faults: readonly [] } | { asked: null, faults: readonly Fault[] }}
 */
export function ask(fields) {
  const analyte = tried(() => analyteFrom(fields), fieldOfAnalyte);
  const titrant = tried(
    () => titrantFrom(fields),
    () => 'concentration',
  );
  if (!analyte.made || !titrant.made) return { asked: null, faults: [...analyte.faults, ...titrant.faults] };
  const activity = textIn(fields, 'activity') === 'davies' ? davies : ideal;
  const titration = titrate({ analyte: analyte.made, titrant: titrant.made, conditions: { activity } });
  const chosen = textIn(fields, 'indicator');
  return { asked: { titration, indicator: chosen === '' ? null : findById(indicators, chosen) }, faults: [] };
}

/** @param {FormData} fields */
function analyteFrom(fields) {
  const reagent = findById(reagents, textIn(fields, 'analyte'));
  const amount = numberIn(fields, 'amount');
  const content =
    textIn(fields, 'measure') === 'grams'
      ? { reagent, grams: amount, purity: numberIn(fields, 'purity') }
      : { reagent, molar: amount };
  return makeSolution({ mL: numberIn(fields, 'volume'), contents: [content] });
}

/** @param {FormData} fields */
const titrantFrom = (fields) =>
  makeSolution({
    contents: [
      { reagent: findById(reagents, textIn(fields, 'titrant')), molar: numberIn(fields, 'concentration') },
    ],
  });

/** @param {string} path of a fault in the recipe for the flask */
function fieldOfAnalyte(path) {
  if (path === 'mL') return 'volume';
  return path.endsWith('purity') ? 'purity' : 'amount';
}

/**
 * What a call makes, or its faults, each with the field that it belongs to.
 *
 * @template Made
 * @param {() => Made} call
 * @param {(path: string) => string} fieldOf
 * @returns {{ made: Made | null, faults: readonly Fault[] }}
 */
function tried(call, fieldOf) {
  try {
    return { made: call(), faults: [] };
  } catch (error) {
    if (!isInputError(error)) throw error;
    const faults = error.issues.map(({ path, received, expected }) => ({
      field: fieldOf(path),
      given: received,
      wanted: expected,
    }));
    return { made: null, faults };
  }
}

/** @returns {error is import('protolysis').InputError} @param {unknown} error */
const isInputError = (error) => error instanceof Error && error.name === 'InputError';

/** @param {FormData} fields @param {string} name */
const textIn = (fields, name) => String(fields.get(name) ?? '').trim();

/**
 * The number in a field; where there is none, the text itself, of which the library says what is wrong.
 *
 * @param {FormData} fields
 * @param {string} name
 * @returns {number}
 */
function numberIn(fields, name) {
  const text = textIn(fields, name);
  const value = text === '' ? Number.NaN : Number(text);
  return Number.isFinite(value) ? value : /** @type {any} */ (text);
}
