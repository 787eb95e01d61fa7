import { readFileSync } from 'node:fs';
import temml from 'temml';
import { Application, Comment, CommentTag, Converter, ReflectionKind } from 'typedoc';
import { questionsOf } from './questions-of.mjs';

/** Puts each export of a module in the category of its question, in the order of the entry file. */
function categorise(/** @type {import('typedoc').ProjectReflection} */ project) {
  for (const entry of project.getChildrenByKind(ReflectionKind.Module)) {
    const questions = questionsOf(readFileSync(`src/${entry.name}.ts`, 'utf8'));
    for (const child of entry.children ?? []) {
      const question = questions.get(child.name);
      if (question === undefined) continue;
      for (const one of child.signatures ?? [child]) {
        one.comment ??= new Comment();
        one.comment.blockTags.push(new CommentTag('@category', [{ kind: 'text', text: question }]));
      }
    }
    entry.children?.sort((a, b) => orderOf(questions, a.name) - orderOf(questions, b.name));
  }
}

/** @param {Map<string, string>} questions @param {string} name */
const orderOf = (questions, name) => [...questions.keys()].indexOf(name);

/** Typesets a block fenced `math`, in TeX, as MathML, which browsers draw by themselves. */
function typesetMath(/** @type {any} */ parser) {
  const fence = parser.renderer.rules.fence;
  parser.renderer.rules.fence = (
    /** @type {any[]} */ tokens,
    /** @type {number} */ at,
    /** @type {any[]} */ ...rest
  ) =>
    tokens[at].info.trim() === 'math'
      ? `<p class="equation">${temml.renderToString(tokens[at].content, { displayMode: true, throwOnError: true })}</p>`
      : fence(tokens, at, ...rest);
}

/** Groups the reference by the question that each function answers, and typesets equations. */
export function load(/** @type {import('typedoc').Application} */ app) {
  // Not before the options are read, since reading them sets all anew.
  app.on(Application.EVENT_BOOTSTRAP_END, () => {
    const entries = ['index', 'measurement', 'plot', 'handout', 'exact'].map((name) =>
      readFileSync(`src/${name}.ts`, 'utf8'),
    );
    const questions = entries.flatMap((text) => [...questionsOf(text).values()]);
    app.options.setValue('categoryOrder', [
      'Start',
      'Guides',
      'Theory',
      'Developers',
      ...new Set(questions),
      '*',
    ]);
    app.options.setValue('markdownItLoader', typesetMath);
  });
  app.converter.on(Converter.EVENT_RESOLVE_BEGIN, ({ project }) => categorise(project), 1000);
}
