/** The one call that is used here. The published types of the package need those of Node and of the DOM. */
declare module 'papaparse' {
  interface Parsed {
    readonly data: readonly (readonly string[])[];
    readonly errors: readonly { readonly message: string }[];
  }
  const papa: {
    parse(text: string, config: { readonly delimiter: string; readonly newline: string }): Parsed;
  };
  export default papa;
}
