// The order of imports: a folder of src imports only from itself, from folders to its left, and from the ground files.
// The catalogue is data alone: it imports types from anywhere, and no code.
const order = [
  'input',
  'solver',
  'catalogue',
  'substance',
  'solution',
  'equilibrium',
  'safety',
  'recipe',
  'titration',
  'buffer',
  'indicator',
  'preparation',
  'measurement',
  'output',
  'plot',
  'display',
  'handout',
];
const ground =
  '^src/(bibliography|capitalised|entry-of|frozen|frozen-with-view|in-words|once|print-number|source)\\.ts$';
const anyFolder = '^src/[^/]+/';

const leftToRight = order.slice(0, -1).map((folder, i) => ({
  name: `${folder}-comes-first`,
  comment: `${folder} imports nothing from the folders after it`,
  severity: 'error',
  from: { path: `^src/${folder}/` },
  to: {
    path: `^src/(${order.slice(i + 1).join('|')})/`,
    ...(folder === 'catalogue' ? { dependencyTypesNot: ['type-only'] } : {}),
  },
}));

/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    ...leftToRight,
    {
      name: 'known-folders',
      comment: 'a new folder of src takes its place in the order above',
      severity: 'error',
      from: {},
      to: { path: anyFolder, pathNot: `^src/(${order.join('|')}|exact)/` },
    },
    {
      name: 'solver-knows-no-chemistry',
      severity: 'error',
      from: { path: '^src/solver/' },
      to: { path: anyFolder, pathNot: '^src/(solver|input)/' },
    },
    {
      name: 'exact-comes-after-titration',
      severity: 'error',
      from: { path: '^src/exact/' },
      to: { path: '^src/(buffer|indicator|measurement|output)/' },
    },
    {
      name: 'exact-is-for-its-entry-and-measurement',
      comment: 'whatever else imported it would carry decimal.js along',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/(exact|measurement)(/|\\.ts$)' },
      to: { path: '^src/exact/' },
    },
    {
      name: 'ground-stands-on-nothing',
      comment: 'the ground files import at most each other',
      severity: 'error',
      from: { path: ground },
      to: { pathNot: `${ground}|^src/input/` },
    },
    {
      name: 'entries-are-faces',
      comment:
        'index.ts and the other entries are for users; inside src, import the file that has the thing. Only index.ts holds others, as namespaces',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/index\\.ts$' },
      to: { path: '^src/[^/]+\\.ts$', pathNot: ground },
    },
    { name: 'no-circle', severity: 'error', from: {}, to: { circular: true } },
    {
      name: 'resolvable',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true },
    },
    {
      name: 'main-entry-imports-no-package',
      severity: 'error',
      from: { path: '^src/index\\.ts$' },
      to: { path: 'node_modules', reachable: true },
    },
    {
      name: 'd3-is-for-plot',
      comment: 'whatever else imported it would carry it along',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/plot/' },
      to: { path: 'node_modules/(@types/)?d3-' },
    },
    {
      name: 'runs-in-a-browser',
      comment: 'no Node built-ins, and no package that users would not get with this one',
      severity: 'error',
      from: { path: '^src/' },
      to: { dependencyTypes: ['core', 'npm-dev', 'npm-no-pkg', 'npm-unknown'] },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
  },
};
