import { MOST_PHOTO_BYTES, type Problem, photoQuery } from '@halfshaft/contract';
import { type Store, withTeam } from '@halfshaft/store';
import { getHTTPStatusCodeFromError } from '@trpc/server/http';
import type { FastifyError, FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import type { Clock } from './clock';
import { AppError, toProblem, toTrpcError } from './errors';
import { type PhotoClaim, type PhotoLimits, showPicture, takePicture } from './features/photo/service';
import { redrawPicture } from './picture';
import { type Account, signInNeeded } from './trpc';

const TAKEN_TYPES = ['image/jpeg', 'image/png', 'image/webp'];
/** A picture never changes under its id; whoever shares the browser afterwards has another sign-in, so not for proxies. */
const KEEP = 'private, max-age=31536000, immutable';

interface PhotoParts {
  store: Store;
  clock: Clock;
  limits: PhotoLimits;
  findAccount(request: FastifyRequest): Promise<Account | null>;
}

/** `PUT` and `GET /photo?team=…&photo=…`: the pictures of photos. What they are of stands in the log. */
export async function addPhotoRoute(app: FastifyInstance, parts: PhotoParts): Promise<void> {
  const { store, clock, limits } = parts;
  const tools = { redraw: redrawPicture, limits, now: () => clock.now() };
  await app.register(async (photos) => {
    photos.removeAllContentTypeParsers();
    const limit = { parseAs: 'buffer' as const, bodyLimit: MOST_PHOTO_BYTES };
    photos.addContentTypeParser(TAKEN_TYPES, limit, async (_request: unknown, body: Buffer) => body);
    photos.setErrorHandler((error: FastifyError, _request, reply) =>
      answerError(app, error, reply, bodyProblem),
    );
    // Before the body is read: a stranger's megabyte is not waited for.
    const accounts = new WeakMap<FastifyRequest, Account>();
    photos.addHook('onRequest', async (request) => {
      const account = await parts.findAccount(request);
      if (!account) throw signInNeeded();
      accounts.set(request, account);
    });
    const readClaim = (request: FastifyRequest) => claimOf(request, accounts.get(request));

    photos.put('/photo', async (request, reply) => {
      const file = Buffer.isBuffer(request.body) ? request.body : Buffer.alloc(0);
      await takePicture(store, readClaim(request), file, tools);
      return reply.send({ ok: true });
    });

    photos.get('/photo', async (request, reply) => {
      const claim = readClaim(request);
      const picture = await withTeam(store, claim, (tx) => showPicture(tx, claim.photoId, claim.size));
      return reply
        .type('image/jpeg')
        .header('content-disposition', 'inline; filename="photo.jpg"')
        .header('content-security-policy', "default-src 'none'; sandbox")
        .header('cache-control', KEEP)
        .send(Buffer.from(picture));
    });
  });
}

function claimOf(request: FastifyRequest, account: Account | undefined) {
  if (!account) throw signInNeeded();
  const { team: teamId, photo: photoId, size } = photoQuery.parse(request.query);
  return { teamId, photoId, userId: account.userId, size } satisfies PhotoClaim & { size: string };
}

/** For routes beside tRPC: the problem alone. `problemOf` gives the route's own words for what Fastify or the schema refused. */
export function answerError(
  app: FastifyInstance,
  error: FastifyError,
  reply: FastifyReply,
  problemOf: (error: FastifyError) => AppError | null,
) {
  const transport = toTrpcError(problemOf(error) ?? error);
  const problem: Problem = toProblem(transport);
  const status = getHTTPStatusCodeFromError(transport);
  if (status >= 500) app.log.error(error);
  return reply.code(status).header('cache-control', 'no-store').send(problem);
}

/** A body that was refused while it was read, or an address that names no photo. */
function bodyProblem(error: FastifyError): AppError | null {
  if (error.code === 'FST_ERR_CTP_BODY_TOO_LARGE') {
    const most = `${MOST_PHOTO_BYTES / 1_000_000} MB`;
    return new AppError(
      'tooMuch',
      `This picture is larger than ${most}, so it was not taken. Take the photo again.`,
    );
  }
  if (error.name === 'ZodError')
    return new AppError('badInput', 'That address names no photo. Go back and choose again.');
  if (error.statusCode === undefined || error.statusCode >= 500) return null;
  return new AppError(
    'badInput',
    'This is no picture that is taken here. Take the photo again, as JPEG, PNG or WebP.',
  );
}
