import { join } from 'node:path';
import fastifyHttpProxy from '@fastify/http-proxy';
import fastifyStatic from '@fastify/static';
import type { FastifyInstance } from 'fastify';
import { contentPolicy, readPagePolicies } from './pages';

export type PageSource =
  /** The build of the web app: static files. */
  | { kind: 'build'; folder: string }
  /** A Next development server, for `npm run dev` only. */
  | { kind: 'development'; url: string }
  /** No pages: tests of the API alone. */
  | { kind: 'none' };

const ONE_YEAR = 'public, max-age=31536000, immutable';

/** Hands everything that is not the API's to the web app. */
export async function servePages(app: FastifyInstance, source: PageSource): Promise<void> {
  if (source.kind === 'development') {
    await app.register(fastifyHttpProxy, { upstream: source.url, websocket: true });
  }
  if (source.kind === 'build') await serveBuild(app, source.folder);
}

async function serveBuild(app: FastifyInstance, folder: string): Promise<void> {
  const policies = await readPagePolicies(folder);
  const plain = contentPolicy(["'self'"]);
  await app.register(fastifyStatic, {
    root: folder,
    redirect: true,
    preCompressed: true,
    setHeaders(response, sent) {
      const path = sent.replace(/\.gz$/, '');
      response.setHeader('content-security-policy', policies.get(path) ?? plain);
      response.setHeader('vary', 'accept-encoding');
      const named = path.startsWith(join(folder, '_next', 'static'));
      response.setHeader('cache-control', named ? ONE_YEAR : 'no-cache');
    },
  });
  app.setNotFoundHandler((_request, reply) => reply.code(404).sendFile('404.html'));
}
