/** Words run together, such as an id of the catalogue, as words: `sodiumCarbonate` as `sodium carbonate`. @internal */
export const inWords = (name: string): string =>
  name.replace(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`);
