/** What to give where an entry of a catalogue is wanted; for a text, how to find the entry. @internal */
export const wanted = (given: unknown, what: string, catalogue: string, example: string): string =>
  typeof given === 'string'
    ? `${what}, as findById(${catalogue}, id) finds it`
    : `${what}, such as ${catalogue}.${example}`;
