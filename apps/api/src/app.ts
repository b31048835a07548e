import { createServer } from 'node:https';
import helmet from '@fastify/helmet';
import type { Problem } from '@halfshaft/contract';
import type { Store } from '@halfshaft/store';
import { type FastifyTRPCPluginOptions, fastifyTRPCPlugin } from '@trpc/server/adapters/fastify';
import Fastify, { type FastifyError, type FastifyInstance, type FastifyServerFactory } from 'fastify';
import type { Auth } from './auth';
import { addAuthRoute, findAccount } from './auth-route';
import { addCarryRoute } from './carry-route';
import type { Clock } from './clock';
import type { Planner } from './features/bay-plan/service';
import type { PhotoLimits } from './features/photo/service';
import type { LiveLog } from './features/work/live';
import { addLiveRoute } from './live-route';
import { passwordLinksOf } from './password-link';
import { addPhotoRoute } from './photo-route';
import { type AppRouter, appRouter } from './root';
import { type PageSource, servePages } from './serve-pages';

export interface AppParts {
  store: Store;
  auth: Auth;
  live: LiveLog;
  clock: Clock;
  planner: Planner;
  pages: PageSource;
  logLevel: string;
  photoLimits: PhotoLimits;
  tls?: TlsParts;
}

/** The server's own key and certificate, as PEM texts. */
export interface TlsParts {
  key: string;
  cert: string;
}

/** Larger than any honest request, so that a 5 MB paste still gets its sentence from the contract. */
const BODY_LIMIT_BYTES = 8 * 1024 * 1024;
const UNSAFE_METHODS = new Set(['POST', 'PUT', 'PATCH', 'DELETE']);

/** The front door, built but not listening: one address for pages, API, sign-in and live events. */
export async function buildApp(parts: AppParts): Promise<FastifyInstance> {
  const app = Fastify({
    logger: { level: parts.logLevel },
    bodyLimit: BODY_LIMIT_BYTES,
    routerOptions: { maxParamLength: 5000 },
    forceCloseConnections: true,
    ...(parts.tls && serveTls(parts.tls)),
  });
  await app.register(helmet, { contentSecurityPolicy: false, hsts: false });
  refuseOtherSites(app);
  app.setErrorHandler((error: FastifyError, _request, reply) => {
    const status = error.statusCode ?? 500;
    if (status >= 500) app.log.error(error);
    reply.code(status).send(toTransport(problemFor(error, status), status));
  });

  app.get('/healthz', async () => ({ ok: true }));
  addAuthRoute(app, parts.auth);
  const accountOf = (request: Parameters<typeof findAccount>[1]) => findAccount(parts.auth, request);
  addLiveRoute(app, { store: parts.store, live: parts.live, findAccount: accountOf });
  const { store, clock, photoLimits: limits } = parts;
  await addPhotoRoute(app, { store, clock, limits, findAccount: accountOf });
  await addCarryRoute(app, { store, clock, findAccount: accountOf });
  const openPasswordLink = passwordLinksOf(parts.auth);
  await app.register(fastifyTRPCPlugin, {
    prefix: '/trpc',
    trpcOptions: {
      router: appRouter,
      allowBatching: true,
      createContext: async ({ req }) => ({
        store: parts.store,
        openPasswordLink,
        clock: parts.clock,
        planner: parts.planner,
        account: await accountOf(req),
      }),
      onError({ error, path }) {
        if (error.code === 'INTERNAL_SERVER_ERROR') app.log.error({ path, err: error.cause ?? error });
      },
    } satisfies FastifyTRPCPluginOptions<AppRouter>['trpcOptions'],
  });
  await servePages(app, parts.pages);
  return app;
}

/** An https server in place of the plain one; everything else is the same, so the app's type is too. */
function serveTls(tls: TlsParts): { serverFactory: FastifyServerFactory } {
  return { serverFactory: (handler) => createServer(tls, handler) };
}

/** Cookies travel with requests from other sites too; a change asked for from another site is refused. */
function refuseOtherSites(app: FastifyInstance): void {
  app.addHook('onRequest', async (request, reply) => {
    const { origin } = request.headers;
    if (!UNSAFE_METHODS.has(request.method) || !origin) return;
    if (URL.canParse(origin) && new URL(origin).host === request.host) return;
    const message = 'This request came from another site and was not taken.';
    await reply.code(403).send(toTransport({ code: 'notAllowed', message, fields: [] }, 403));
  });
}

function problemFor(error: FastifyError, status: number): Problem {
  if (error.code === 'FST_ERR_CTP_BODY_TOO_LARGE') {
    return { code: 'tooMuch', message: 'That is larger than 8 MB. Send less at once.', fields: [] };
  }
  if (status < 500) {
    return {
      code: 'badInput',
      message: 'What was sent could not be read. Reload the page and try again.',
      fields: [],
    };
  }
  const message = 'Something went wrong on our side. Nothing was changed. Try again in a moment.';
  return { code: 'unexpected', message, fields: [] };
}

/** The shape tRPC clients read, for errors raised before tRPC is reached. */
function toTransport(problem: Problem, httpStatus: number) {
  return { error: { message: problem.message, code: -32600, data: { httpStatus, problem } } };
}
