import temml from 'temml';

/**
 * Sets equations apart from the text: a block fenced `math`, in TeX, as MathML, which browsers draw by themselves; and the
 * indented lines of a doc comment as they stand there, each on a line of its own.
 *
 * @param {any} parser of Markdown, as markdown-it has it
 */
export function typesetMath(parser) {
  const fence = parser.renderer.rules.fence;
  parser.renderer.rules.fence = (
    /** @type {any[]} */ tokens,
    /** @type {number} */ at,
    /** @type {any[]} */ ...rest
  ) =>
    tokens[at].info.trim() === 'math'
      ? `<p class="equation">${temml.renderToString(tokens[at].content, { displayMode: true, throwOnError: true })}</p>`
      : fence(tokens, at, ...rest);
  parser.core.ruler.after('block', 'indented-equations', markIndented);
}

/** @param {{ src: string, tokens: readonly any[] }} state */
function markIndented({ src, tokens }) {
  const lines = src.split('\n');
  for (const token of tokens) {
    if (token.type !== 'paragraph_open' || token.level > 0) continue;
    const isIndented = lines.slice(...token.map).every((line) => /^ {2,3}\S/.test(line));
    if (isIndented) token.attrSet('class', 'equation in-lines');
  }
}
