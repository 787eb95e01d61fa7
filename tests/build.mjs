import { basename } from 'node:path';
import manifest from '../package.json' with { type: 'json' };

/**
 * Leaves `export * as acids from './acids.js'` of the main entry as it stands, one entry beside another. Bundled in, a
 * namespace is an object that a call fills, and bundlers keep such a call with all that it names, wanted or not.
 *
 * @type {import('esbuild').Plugin}
 */
const namespaces = {
  name: 'namespaces',
  setup({ initialOptions, onResolve }) {
    const extension = initialOptions.outExtension?.['.js'] ?? '.js';
    onResolve({ filter: /^\.\/[\w-]+\.js$/ }, ({ path, importer }) => {
      const name = basename(path, '.js');
      const isNamespace = basename(importer) === 'index.ts' && Object.hasOwn(manifest.tsup.entry, name);
      return isNamespace ? { path: `./${name}${extension}`, external: true } : undefined;
    });
  },
};

/**
 * Packages that are ES modules alone. The ES build leaves them to be installed beside it; a CommonJS file could not
 * require them before Node.js 20.19, so there they are built in.
 */
const esModulesAlone = /^d3-(scale|shape)$/;

/** @type {import('esbuild').Plugin} */
const packagesOutside = {
  name: 'packages-outside',
  setup({ initialOptions, onResolve }) {
    if (initialOptions.outExtension?.['.js'] === '.cjs') return;
    onResolve({ filter: esModulesAlone }, ({ path }) => ({ path, external: true, sideEffects: false }));
  },
};

/** Drops `import './chunk-….js'`, left for the order of side effects, of which there are none: bundlers warn of it. */
const noBareImports = {
  name: 'no-bare-imports',
  /** @param {string} code @param {{ map?: unknown }} chunk */
  renderChunk: (code, { map }) => ({ code: code.replace(/^import "\.\/chunk-\w+\.js";$/gm, ''), map }),
};

export default {
  ...manifest.tsup,
  noExternal: [esModulesAlone],
  esbuildPlugins: [namespaces, packagesOutside],
  plugins: [noBareImports],
};
