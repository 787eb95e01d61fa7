import ts from 'typescript';

/** A fenced block of code in a document or a doc comment. */
export interface Block {
  readonly file: string;
  /** The line of its first line of code, counted from 1. */
  readonly line: number;
  readonly language: 'ts' | 'js';
  readonly code: string;
  /** False for a fence marked `ts no-run`. */
  readonly run: boolean;
  /** What the code prints, where a `text` fence follows it directly. */
  readonly printed?: string;
}

interface Fence {
  readonly line: number;
  readonly info: string;
  readonly text: string;
  readonly followsFence: boolean;
}

function fencesOf(lines: readonly string[]): Fence[] {
  const fences: Fence[] = [];
  let start: number | undefined;
  let onlyBlanksSinceFence = false;
  for (const [i, line] of lines.entries()) {
    const isFence = line.trimStart().startsWith('```');
    if (isFence && start === undefined) start = i;
    else if (isFence && start !== undefined) {
      fences.push({
        line: start + 2,
        info: (lines[start] as string).trim().slice(3).trim(),
        text: lines.slice(start + 1, i).join('\n'),
        followsFence: onlyBlanksSinceFence,
      });
      start = undefined;
      onlyBlanksSinceFence = true;
    } else if (start === undefined && line.trim() !== '') onlyBlanksSinceFence = false;
  }
  return fences;
}

/** The lines of a source file's doc comments without their stars; every other line left empty, so that lines keep their numbers. */
export function docLinesOf(source: string): string[] {
  const lines: string[] = [];
  let inside = false;
  for (const line of source.split('\n')) {
    if (/^\s*\/\*\*/.test(line)) inside = true;
    lines.push(inside ? line.replace(/^\s*\/?\*+ ?/, '') : '');
    if (line.includes('*/')) inside = false;
  }
  return lines;
}

/** The blocks of TypeScript and JavaScript in a Markdown file, or in the doc comments of a source file. */
export function blocksOf(file: string, text: string): Block[] {
  const fences = fencesOf(file.endsWith('.ts') ? docLinesOf(text) : text.split('\n'));
  return fences.flatMap((fence, i) => {
    const [language, ...flags] = fence.info.split(/\s+/);
    if (language !== 'ts' && language !== 'js') return [];
    const next = fences[i + 1];
    const printed = next?.info === 'text' && next.followsFence ? next.text : undefined;
    return [
      {
        file,
        line: fence.line,
        language,
        code: fence.text,
        run: !flags.includes('no-run'),
        ...(printed === undefined ? {} : { printed }),
      },
    ];
  });
}

const promise = /^\/\/ => ?/;

/**
 * The block as a module: each `expression; // => value` becomes an assertion on the same line. A number with a decimal
 * point or an exponent is held to the digits shown, an integer exactly; `// => throws Name: part of the message`
 * wants that error. The value of `const name = …; // => value` is that of `name`.
 *
 * @param shown the path from which the module imports `shown.ts`
 * @throws an Error with file and line where a `// =>` does not stand after a statement of its own.
 */
export function moduleOf({ file, line, code }: Block, shown: string): string {
  const source = ts.createSourceFile('block.ts', code, ts.ScriptTarget.Latest, true);
  const edits: { from: number; to: number; text: string }[] = [];

  const visit = (node: ts.Node): void => {
    ts.forEachChild(node, visit);
    if (!ts.isExpressionStatement(node) && !ts.isVariableStatement(node)) return;
    const comment = ts.getTrailingCommentRanges(code, node.end)?.[0];
    const said = comment && code.slice(comment.pos, comment.end);
    if (!said || !promise.test(said)) return;
    const value = said.replace(promise, '');
    if (ts.isVariableStatement(node)) {
      const names = node.declarationList.declarations.map(({ name }) => name.getText());
      edits.push({
        from: node.end,
        to: node.end,
        text: names.map((name) => assertion(name, value)).join(''),
      });
    } else {
      edits.push({
        from: node.getStart(),
        to: node.end,
        text: assertion(node.expression.getText(), value),
      });
    }
  };
  visit(source);

  if (edits.length !== code.split('// =>').length - 1)
    throw new Error(`${file}:${line}: a "// =>" must stand on the line where a statement ends`);
  const body = edits
    .sort((a, b) => b.from - a.from)
    .reduce((text, edit) => text.slice(0, edit.from) + edit.text + text.slice(edit.to), code);
  return `import { expect as __expect } from 'vitest'; import * as __docs from '${shown}'; ${body}\nexport {};\n`;
}

function assertion(expression: string, value: string): string {
  if (value.startsWith('throws '))
    return `__docs.expectThrow(() => ${expression}, ${JSON.stringify(value.slice('throws '.length))});`;
  return `__expect(${expression}).toEqual(${withDigits(value)});`;
}

/** A value as a JavaScript expression in which each number with a point or an exponent stands for its rounding interval. */
function withDigits(value: string): string {
  const text = `(${value})`;
  const source = ts.createSourceFile('value.ts', text, ts.ScriptTarget.Latest, true);
  const numbers: ts.Node[] = [];
  const visit = (node: ts.Node): void => {
    const isNumber = ts.isPrefixUnaryExpression(node)
      ? ts.isNumericLiteral(node.operand)
      : ts.isNumericLiteral(node);
    if (isNumber && /[.e]/i.test(node.getText())) numbers.push(node);
    else ts.forEachChild(node, visit);
  };
  visit(source);
  return numbers.reduceRight(
    (edited, node) =>
      `${edited.slice(0, node.getStart())}__docs.shown('${node.getText()}')${edited.slice(node.end)}`,
    text,
  );
}
