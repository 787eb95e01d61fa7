/// <reference path="./papaparse.d.ts" />
import papa from 'papaparse';

/** A line of text in cells. @internal */
export interface Line {
  /** From 1. */
  readonly line: number;
  readonly text: string;
  readonly cells: readonly string[];
  /** Why it could not be taken apart; empty where it could. */
  readonly fault: string;
}

/**
 * The lines of a text, each in cells: apart by tabs, by semicolons, by blanks between numbers or by commas, whichever
 * most lines speak for. A line with a quotation mark is parsed by itself, so that an open one spoils one line and no
 * more.
 *
 * @internal
 */
export function linesOf(text: string): readonly Line[] {
  const texts = text.replace(/^\uFEFF/, '').split(/\r\n|\r|\n/);
  const delimiter = delimiterOf(texts.filter((each) => each.trim() !== ''));
  const separated = texts.map((each) =>
    delimiter === ' ' ? each.trim().replace(/[\s\u00A0]+/g, '\t') : each,
  );
  const parse = (lines: string) =>
    papa.parse(lines, { delimiter: delimiter === ' ' ? '\t' : delimiter, newline: '\n' });
  const isPlain = (line: string) => line.trim() !== '' && !line.includes('"');
  const plain = separated.filter(isPlain);
  const rows = plain.length > 0 ? parse(plain.join('\n')).data : [];
  let next = 0;
  return texts.map((each, k) => {
    const [line, own] = [{ line: k + 1, text: each }, separated[k] as string];
    if (each.trim() === '') return { ...line, cells: [], fault: '' };
    const { data, errors } = isPlain(own) ? { data: [rows[next++] ?? []], errors: [] } : parse(own);
    const cells = (data[0] ?? []).map((cell) => cell.trim());
    return { ...line, cells, fault: errors[0]?.message ?? '' };
  });
}

const number = String.raw`[+\-−]?\d+(?:[.,]\d+)?`;
const numbersBetweenBlanks = new RegExp(`^\\s*${number}(?:[\\s\\u00A0]+${number})+\\s*$`);

/**
 * What stands between the cells of most lines. Tabs come first: in what a spreadsheet copies, a comma is a decimal
 * comma.
 */
function delimiterOf(texts: readonly string[]): '\t' | ';' | ' ' | ',' {
  const speakFor = (is: (text: string) => boolean) => 2 * texts.filter(is).length > texts.length;
  if (speakFor((text) => text.includes('\t'))) return '\t';
  if (speakFor((text) => text.includes(';'))) return ';';
  if (speakFor((text) => numbersBetweenBlanks.test(text))) return ' ';
  return speakFor((text) => text.includes(',')) ? ',' : '\t';
}
