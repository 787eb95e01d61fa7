/** A text made harmless in HTML, SVG and the value of an attribute; what XML does not allow becomes U+FFFD. @internal */
export const asMarkup = (text: string): string =>
  Array.from(text, (character) => {
    if (isForbidden(character.codePointAt(0) as number)) return '\uFFFD';
    return entities[character] ?? character;
  }).join('');

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Control characters, halves of surrogate pairs, and the two that are no characters: XML 1.0, production 2. */
const isForbidden = (code: number): boolean =>
  (code < 0x20 && code !== 0x09 && code !== 0x0a && code !== 0x0d) ||
  (code >= 0xd800 && code <= 0xdfff) ||
  code === 0xfffe ||
  code === 0xffff;
