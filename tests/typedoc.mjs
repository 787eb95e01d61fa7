import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Application, Comment, CommentTag, Converter, JSX, ReflectionKind } from 'typedoc';
import { questionsOf } from './questions-of.mjs';
import { buildTryPage } from './try-page.mjs';
import { typesetMath } from './typeset-math.mjs';

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

/** Puts the page where one may try it into the site, and a link to it over the sidebar of every page. */
function addTryPage(/** @type {import('typedoc').Application} */ { renderer }) {
  renderer.hooks.on('sidebar.begin', (context) =>
    JSX.createElement(
      'a',
      { class: 'try', href: context.relativeURL('try/index.html') },
      'Try it in the browser',
    ),
  );
  renderer.postRenderAsyncJobs.push(({ outputDirectory }) => buildTryPage(join(outputDirectory, 'try')));
}

/** Groups the reference by the question that each function answers, typesets equations and adds the page to try it. */
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
  addTryPage(app);
  app.converter.on(Converter.EVENT_RESOLVE_BEGIN, ({ project }) => categorise(project), 1000);
}
