/**
 * What would break a printed line or reorder it: control characters, separators of lines, marks of writing direction
 * and halves of characters (Unicode 15, categories Cc, Zl, Zp, Cs and property Bidi_Control).
 */
const breaking = /[\p{Cc}\p{Zl}\p{Zp}\p{Cs}\p{Bidi_Control}]/u;

/** Whether a text can stand in a line of a view or a table as it is. @internal */
export const isOneLine = (text: string): boolean => !breaking.test(text);

/** A text with each such character as its escape, such as `\u000a`, so that a message may quote it. @internal */
export const escaped = (text: string): string =>
  text.replace(
    new RegExp(breaking, 'gu'),
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
