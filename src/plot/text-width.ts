/**
 * The width of a text, px, as this library reckons with it: a little more than the widest of the faces that a picture
 * asks for takes, so that a text never runs out of its place whichever of them the reader's machine has.
 *
 * Four classes, in parts of the size of the type: 0.42 for narrow characters, 0.64 for small letters and figures, 0.79
 * for capitals, 1.00 for wide letters and signs; 1.25 for whatever is not listed. Bold type is 1.14 times as wide. The
 * classes were set by the advance widths in the font file of DejaVu Sans 2.37 (tests/reference/sans-widths.json).
 *
 * @internal
 */
export function textWidth(text: string, size: number, isBold = false): number {
  let width = 0;
  for (const character of text) width += widthOf(character);
  return width * size * (isBold ? 1.14 : 1);
}

function widthOf(character: string): number {
  if (narrow.test(character)) return 0.42;
  if (small.test(character)) return 0.64;
  if (capital.test(character)) return 0.79;
  return wide.test(character) ? 1 : 1.25;
}

const narrow = /^[ \u00A0'()[\].,:;!|/\\·fijlrtIJ\-⁰¹²³⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉]$/;
const small = /^[a-eghkn-qsu-vx-z0-9"*_`?{}$°–µ⁺⁻ßà-åç-öø-ýÿEFLPSTY]$/;
const capital = /^[A-DGHKNOQRUVXZ&]$/;
const wide = /^[mwMW%@#+<>=^~±→−≈…æ÷À-Þ]$/;

/**
 * A text in lines of at most `width` px, broken between words, and inside a word that is longer than a line.
 *
 * @internal
 */
export function wrapped(text: string, width: number, size: number, isBold = false): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/[ \t\n]+/).flatMap((whole) => pieces(whole, width, size, isBold))) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line === '' || textWidth(longer, size, isBold) <= width) line = longer;
    else {
      lines.push(line);
      line = word;
    }
  }
  return line === '' ? lines : [...lines, line];
}

/** A word cut so that each piece fits into a line. */
function pieces(word: string, width: number, size: number, isBold: boolean): string[] {
  const cut: string[] = [];
  let piece = '';
  for (const character of word) {
    if (piece !== '' && textWidth(piece + character, size, isBold) > width) {
      cut.push(piece);
      piece = '';
    }
    piece += character;
  }
  return [...cut, piece];
}
