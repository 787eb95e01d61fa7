import { cpSync, mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import manifest from '../package.json' with { type: 'json' };

const root = fileURLToPath(new URL('..', import.meta.url));

/** `protolysis/plot` and the other entries, each as its file of src. */
const alias = Object.fromEntries(
  Object.entries(manifest.tsup.entry)
    .map(([name, path]) => [name === 'index' ? manifest.name : `${manifest.name}/${name}`, root + path])
    .reverse(),
);

/**
 * Puts the page where one may try it into a folder: its markup, its style, and its modules with the library as one
 * script, which a browser also takes from a file system, where it refuses modules.
 *
 * @param {string} folder
 */
export async function buildTryPage(folder) {
  mkdirSync(folder, { recursive: true });
  for (const file of ['index.html', 'style.css']) cpSync(`${root}docs/try/${file}`, `${folder}/${file}`);
  await build({
    entryPoints: [`${root}docs/try/main.mjs`],
    outfile: `${folder}/page.js`,
    bundle: true,
    minify: true,
    format: 'iife',
    target: 'es2022',
    charset: 'utf8',
    alias,
  });
}
