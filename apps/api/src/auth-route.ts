import { fromNodeHeaders } from 'better-auth/node';
import type { FastifyInstance, FastifyRequest } from 'fastify';
import type { Auth } from './auth';
import { mendText } from './mend-text';
import type { Account } from './trpc';

/** `/auth/*`: the sign-in library's own endpoints. */
export function addAuthRoute(app: FastifyInstance, auth: Auth): void {
  app.route({
    method: ['GET', 'POST'],
    url: '/auth/*',
    async handler(request, reply) {
      const answer = await auth.handler(toWebRequest(request));
      reply.status(answer.status);
      for (const [name, value] of answer.headers) {
        if (name !== 'set-cookie') reply.header(name, value);
      }
      for (const cookie of answer.headers.getSetCookie()) reply.header('set-cookie', cookie);
      return reply.send(answer.body ? await answer.text() : null);
    },
  });
}

/** The account behind a request's session cookie, or null. */
export async function findAccount(auth: Auth, request: FastifyRequest): Promise<Account | null> {
  const session = await auth.api.getSession({ headers: fromNodeHeaders(request.headers) });
  return session && { userId: session.user.id, isAnonymous: session.user.isAnonymous === true };
}

function toWebRequest(request: FastifyRequest): Request {
  const headers = fromNodeHeaders(request.headers);
  // Throttling counts by this address; whatever the client claims to be is overwritten.
  headers.set('x-halfshaft-ip', request.ip);
  const url = new URL(request.url, `${request.protocol}://${request.host}`);
  const body = request.method === 'GET' ? null : JSON.stringify(mendText(request.body ?? {}));
  return new Request(url, { method: request.method, headers, body });
}
