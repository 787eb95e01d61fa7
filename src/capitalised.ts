/** A sentence with its first letter as a capital. @internal */
export const capitalised = (sentence: string): string => sentence.charAt(0).toUpperCase() + sentence.slice(1);
