import { describe, expect, it } from 'vitest';
import { checkFeatures } from './check-features.mjs';
import { temporaryProject } from './temporary-project.fixture.mjs';

const problemsWith = (...paths) =>
  checkFeatures(temporaryProject(Object.fromEntries(paths.map((path) => [path, '']))));

const CAR = ['apps/api/src/features/car/router.ts', 'packages/contract/src/car.ts'];

describe('the feature check', () => {
  it('accepts the whole vocabulary, tests, and the files of contract that are no noun', () => {
    const files = [
      'service',
      'data',
      'ability',
      'actions',
      'live',
      'file',
      'merge',
      'constants',
      'service.test',
      'claims.test',
    ];
    const extras = ['ids', 'outcome', 'index', 'car.test', 'ids.test'];
    expect(
      problemsWith(
        ...CAR,
        ...files.map((file) => `apps/api/src/features/car/${file}.ts`),
        ...extras.map((file) => `packages/contract/src/${file}.ts`),
        'apps/api/src/workers/plan.ts',
        'apps/api/src/app.ts',
      ),
    ).toEqual([]);
  });

  it('accepts a project where nothing has been started', () => {
    expect(problemsWith('README.md')).toEqual([]);
    expect(problemsWith('packages/contract/src/car.ts')).toEqual([]);
  });

  it.each([
    ['apps/api/src/features/car/queries.ts', 'queries in data.ts'],
    ['apps/api/src/features/car/lib/wear.ts', 'has no folders inside'],
    ['apps/api/src/features/shared.ts', 'features/<noun>/'],
    ['apps/api/src/http/session.ts', 'only features/ and workers/'],
    ['apps/api/src/features/team/router.ts', 'has no packages/contract/src/team.ts'],
    ['packages/contract/src/team.ts', 'no feature has this noun'],
    ['apps/web/lib/helpers.ts', '"helpers" says nothing'],
    ['apps/web/lib/manager.test.ts', '"manager" says nothing'],
    ['packages/itinerary/src/utils2.ts', '"utils2" says nothing'],
    ['packages/itinerary/src/helpers/cut.ts', '"helpers" says nothing'],
  ])('refuses %s', (path, says) => {
    const problems = problemsWith(...CAR, path);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain(says);
  });

  it('knows that a manager and a helper are people too', () => {
    expect(problemsWith('apps/web/features/team/team-manager.tsx', 'tests/road/helper.test.ts')).toEqual([]);
  });
});
