import type { InputError, Issue } from 'protolysis';

/** The faults that a call lists; none where it answers. Anything but an InputError is passed on. */
export function faultsOf(call: () => unknown): readonly Issue[] {
  try {
    call();
    return [];
  } catch (error) {
    if ((error as Error).name === 'InputError') return (error as InputError).issues;
    throw error;
  }
}

/** Code and path of each fault, as `code path`. */
export const listed = (call: () => unknown): string[] =>
  faultsOf(call).map(({ code, path }) => `${code} ${path}`);
