import { DEMO_ORGANISER, DEMO_TEAMS } from '@halfshaft/prisma/demo';
import { readEnv } from '../src/env';
import type { PageSource } from '../src/serve-pages';
import { startServer } from '../src/server';
import { openDatabase } from './database';
import { ensureDemo } from './demo';
import { startDevelopment } from './development';
import { openHomeFolder, readSecrets, type Secrets } from './home-folder';
import { markRunning, refuseSecondStart, unmarkRunning } from './one-at-a-time';
import { choosePort } from './port';
import { StartProblem } from './problem';
import { planVan, VAN_HOST, type VanPlan } from './van/plan-van';
import { serveVan } from './van/serve-van';
import { tellVan } from './van/tell-van';
import { buildWebIfNeeded, WEB_OUT } from './web-build';

const isDevelopment = process.argv.includes('--dev');
/** `npm run van`: for the phones of the network around, without internet. */
const isVan = process.argv.includes('--van');
const say = (sentence: string) => void process.stdout.write(`${sentence}\n`);

type Stop = () => Promise<void>;
/** Undone in reverse order, however far the start got. */
const stops: Stop[] = [];
let stopping: Promise<void> | null = null;

/** A terminal's Ctrl-C arrives twice, from the terminal and handed on by the parent: both wait for the one stop. */
async function stopAll(code: number): Promise<never> {
  stopping ??= undoAll();
  await stopping;
  process.exit(code);
}

async function undoAll(): Promise<void> {
  for (const stop of stops.reverse()) await stop().catch((error: unknown) => say(String(error)));
  unmarkRunning();
}

for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => void stopAll(0));

async function start(): Promise<void> {
  openHomeFolder();
  refuseSecondStart();
  const host = isVan ? VAN_HOST : (process.env.HOST ?? '127.0.0.1');
  const port = await choosePort(host);
  const van = isVan ? await planVan(port) : null;
  const publicUrl = van?.joinUrl ?? process.env.PUBLIC_URL ?? `http://localhost:${port}`;
  markRunning(publicUrl);
  const secrets = readSecrets();
  const database = await openDatabase(secrets);
  stops.push(database.stop);
  const { appUrl, authUrl } = database;
  const wantsDemo = process.env.HALFSHAFT_DEMO !== 'no';
  const demo = { appUrl, authUrl, secret: secrets.signInSecret, password: secrets.demoPassword };
  if (wantsDemo) await ensureDemo(demo, say);
  const settings = {
    ...process.env,
    DATABASE_APP_URL: appUrl,
    DATABASE_AUTH_URL: authUrl,
    SIGN_IN_SECRET: secrets.signInSecret,
    PUBLIC_URL: publicUrl,
    HOST: host,
    PORT: String(port),
  };
  if (isDevelopment) {
    stops.push(await startDevelopment(settings));
  } else {
    stops.push(await serveBuild(settings, van));
  }
  tellAddress(publicUrl, wantsDemo ? secrets : null);
}

async function serveBuild(settings: NodeJS.ProcessEnv, van: VanPlan | null): Promise<Stop> {
  buildWebIfNeeded(say);
  const pages: PageSource = { kind: 'build', folder: WEB_OUT };
  if (!van) return (await startServer(readEnv(settings), { pages })).close;
  const running = await serveVan(van, settings, pages);
  say(tellVan(van, running.fingerprint));
  return running.stop;
}

function tellAddress(url: string, secrets: Secrets | null): void {
  say(`\nHalfshaft is ready: ${url}`);
  if (secrets) {
    say(`Demo sign-ins, all with the password ${secrets.demoPassword}`);
    for (const team of DEMO_TEAMS) {
      say(`  ${team.name}: ${team.people.map(({ email, role }) => `${email} (${role})`).join(', ')}`);
    }
    say(`  ${DEMO_ORGANISER.name}: ${DEMO_ORGANISER.email} (organiser)`);
  }
  say('Stop with Ctrl-C.\n');
}

start().catch((error: unknown) => {
  const known = error instanceof StartProblem;
  process.stderr.write(
    `${known ? error.message : `Halfshaft could not start.\n${error instanceof Error ? (error.stack ?? error.message) : String(error)}`}\n`,
  );
  return stopAll(1);
});
