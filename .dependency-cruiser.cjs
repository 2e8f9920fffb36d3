// The layers of the code as rules: a folder imports only from those before it in the list.
const LADDER = [
  'base',
  'languages',
  'palette',
  'figures',
  'page',
  'activities',
  'learner',
  'editing',
  'sheets',
  'by-hand',
  'press',
  'shaping',
  'records',
  'supplies',
  'plan',
  'words',
  'cli',
];
const CORE = LADDER.slice(0, -1);

const downward = LADDER.map((layer, index) => ({
  name: `${layer}-imports-downward-only`,
  severity: 'error',
  from: { path: `^src/${layer}/` },
  to: { path: `^src/(${[...LADDER.slice(index + 1), 'web'].join('|')})/` },
}));

module.exports = {
  forbidden: [
    ...downward,
    {
      name: 'no-cycles',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'web-and-cli-do-not-meet',
      severity: 'error',
      from: { path: '^src/web/' },
      to: { path: '^src/cli/' },
    },
    {
      name: 'press-knows-no-activity',
      severity: 'error',
      from: { path: '^src/press/' },
      to: { path: '^src/(figures/(?!index)|activities|sheets)/' },
    },
    {
      name: 'an-activity-imports-no-other-activity',
      severity: 'error',
      from: { path: '^src/activities/([^/]+)/' },
      to: { path: '^src/activities/[^/]+/', pathNot: '^src/activities/$1/' },
    },
    {
      name: 'an-activity-knows-no-registry',
      severity: 'error',
      from: { path: '^src/activities/[^/]+/' },
      to: { path: '^src/activities/(registry|index)\\.ts$' },
    },
    {
      name: 'a-solver-shares-nothing-with-its-generator',
      severity: 'error',
      from: { path: '^src/activities/[^/]+/solve[^/]*\\.ts$', pathNot: '\\.test\\.ts$' },
      to: { path: '^src/activities/[^/]+/', pathNot: '/(task|solve[^/]*)\\.ts$' },
    },
    {
      name: 'a-generator-knows-no-solver',
      severity: 'error',
      from: { path: '^src/activities/[^/]+/generate[^/]*\\.ts$', pathNot: '\\.test\\.ts$' },
      to: { path: '/solve[^/]*\\.ts$' },
    },
    {
      name: 'wrong-tasks-know-neither-generator-nor-solver',
      severity: 'error',
      from: { path: '^src/activities/[^/]+/wrong-to-test\\.ts$' },
      to: { path: '^src/activities/[^/]+/', pathNot: '/task\\.ts$' },
    },
    {
      name: 'a-folder-is-entered-by-its-index',
      severity: 'error',
      from: { path: '^src/([^/]+)/' },
      to: { path: '^src/[^/]+/', pathNot: ['^src/$1/', '^src/[^/]+/index\\.ts$'] },
    },
    {
      name: 'the-core-knows-no-node',
      severity: 'error',
      from: { path: `^src/(${CORE.join('|')})/`, pathNot: '\\.test\\.ts$' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'shipped-code-uses-shipped-packages',
      severity: 'error',
      from: { path: '^src/', pathNot: '\\.test\\.ts$' },
      to: { dependencyTypes: ['npm-dev'] },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '\\.json$' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.base.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'types', 'default'],
    },
  },
};
