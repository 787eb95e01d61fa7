/** The same data after a trip through JSON. */
export const throughJSON = <Data>(data: Data): Data => JSON.parse(JSON.stringify(data));
