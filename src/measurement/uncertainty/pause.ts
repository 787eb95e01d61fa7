/** Lets what waits have its turn: a click, a frame, another calculation. @internal */
export const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

/** In every browser and in Node.js; not in the language, and src knows no more than that. */
declare const setTimeout: (run: () => void, ms: number) => unknown;
