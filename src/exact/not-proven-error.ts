/**
 * No bracket could be proven with 64 times the digits asked for: two roots lie closer together than that, or the
 * solution sits on a jump of its law of activity. No input within the limits is known to lead here.
 *
 * Tell it by `name` (`'NotProvenError'`), as an `InputError`.
 */
export class NotProvenError extends Error {
  declare name: 'NotProvenError'; // a field with a value would cost the class its name in CommonJS

  constructor(what: string, digits: number) {
    super(
      `${what}: no bracket could be proven with ${digits} digits; ask for fewer digits, or change the input a little.`,
    );
    this.name = 'NotProvenError';
  }
}

/** The most digits to try, where so many are wanted. @internal */
export const mostDigits = (places: number): number => 64 * (places + 20);
