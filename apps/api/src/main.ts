import { resolve } from 'node:path';
import { readEnv } from './env';
import { startServer } from './server';

/** The production entry: settings from the environment, pages from the build beside it. */
const env = readEnv();
const pages = env.WEB_DEV_URL
  ? { kind: 'development' as const, url: env.WEB_DEV_URL }
  : { kind: 'build' as const, folder: resolve(import.meta.dirname, env.WEB_FOLDER) };
const running = await startServer(env, { pages });
process.stdout.write(`Halfshaft listens on ${running.url}\n`);
for (const signal of ['SIGINT', 'SIGTERM'] as const) {
  process.once(signal, () => running.close().then(() => process.exit(0)));
}
