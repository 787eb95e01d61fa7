/**
 * Words run together, such as an id of the catalogue or a key of a result, as words: `sodiumCarbonate` as `sodium
 * carbonate`. What is no words run together, such as `pKa` or `NaCl`, stands as it is.
 *
 * @internal
 */
export const inWords = (name: string): string =>
  /^[a-z]{2,}(?:[A-Z][a-z]+)+$/.test(name)
    ? name.replace(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`)
    : name;
