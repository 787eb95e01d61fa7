import ts from 'typescript';

/** A notebook as it stands in its file (nbformat 4), as far as it is looked at. */
export interface Notebook {
  readonly cells: readonly Cell[];
}

interface Cell {
  readonly cell_type: 'markdown' | 'code';
  readonly source: string | readonly string[];
  readonly outputs?: readonly Output[];
}

interface Output {
  readonly output_type: 'stream' | 'execute_result' | 'display_data' | 'error';
  readonly text?: string | readonly string[];
  readonly data?: Readonly<Record<string, string | readonly string[]>>;
}

/** What a code cell holds and what it showed. */
export interface CodeCell {
  readonly code: string;
  /** What was printed, then the value at its end as text. */
  readonly text: string;
  /** The value at its end as HTML, where it has any. */
  readonly html: string | null;
}

const joined = (text: string | readonly string[] = ''): string =>
  typeof text === 'string' ? text : text.join('');

// biome-ignore lint/suspicious/noControlCharactersInRegex: the escape sequence that colours begin with
const colour = /\x1b\[\d+m/g;

/** The code cells of a notebook with their outputs, without colours. */
export const codeCellsOf = ({ cells }: Notebook): readonly CodeCell[] =>
  cells
    .filter(({ cell_type }) => cell_type === 'code')
    .map(({ source, outputs = [] }) => {
      const htmls = outputs.flatMap(({ data }) => (data?.['text/html'] ? [joined(data['text/html'])] : []));
      return {
        code: joined(source),
        text: outputs
          .map(({ text, data }) =>
            joined(text ?? data?.['text/plain'])
              .replace(colour, '')
              .trimEnd(),
          )
          .join('\n'),
        html: htmls.length > 0 ? htmls.join('\n') : null,
      };
    });

/** The cells as one module that hands the number of each cell and the value at its end to `__shown`. */
export function moduleOfCells(cells: readonly CodeCell[]): string {
  return cells
    .map(({ code }, k) => {
      const source = ts.createSourceFile('cell.ts', code, ts.ScriptTarget.Latest, true);
      const last = source.statements.at(-1);
      const before = `__begin(${k});\n`;
      if (!last || !ts.isExpressionStatement(last)) return `${before}${code}`;
      return `${before}${code.slice(0, last.getStart())}__shown(${last.expression.getText()});`;
    })
    .join('\n');
}

/** Numbers, and what stands between them. */
const pieces = (text: string): readonly string[] => text.split(/(-?\d+(?:\.\d+)?(?:e[+-]?\d+)?)/);

/**
 * Whether two outputs say the same: to the letter, but that a number may differ by 1e-9 of itself, since engines print all
 * digits of a double and differ in the last ones of a logarithm.
 */
export function isAlike(one: string, other: string): boolean {
  const [a, b] = [pieces(one), pieces(other)];
  return (
    a.length === b.length &&
    a.every((piece, k) => {
      const beside = b[k] as string;
      if (piece === beside) return true;
      const [x, y] = [Number(piece), Number(beside)];
      return k % 2 === 1 && Math.abs(x - y) <= 1e-9 * Math.abs(y);
    })
  );
}
