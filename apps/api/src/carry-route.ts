import { Readable } from 'node:stream';
import {
  bringInQuery,
  CARRY_ENDING,
  type CarriedHead,
  carryQuery,
  firstLine,
  MOST_CARRY_BYTES,
} from '@halfshaft/contract';
import { type Store, withTeam } from '@halfshaft/store';
import type { FastifyError, FastifyInstance, FastifyRequest } from 'fastify';
import { packCarried, unpackCarried } from './carry-file';
import { type Clock, toDate, toDay } from './clock';
import { AppError } from './errors';
import { lookAt, takeIn } from './features/bring-in/service';
import { takeAlong } from './features/carry/service';
import { showPicture } from './features/photo/service';
import { answerError } from './photo-route';
import { type Account, signInNeeded } from './trpc';

interface CarryParts {
  store: Store;
  clock: Clock;
  findAccount(request: FastifyRequest): Promise<Account | null>;
}

/** `GET /carry?team=…&event=…`: an event as a file. `PUT /carry?step=…`: the log part of one; its pictures go to `/photo`. */
export async function addCarryRoute(
  app: FastifyInstance,
  { store, clock, findAccount }: CarryParts,
): Promise<void> {
  await app.register(async (carry) => {
    carry.removeAllContentTypeParsers();
    const limit = { parseAs: 'buffer' as const, bodyLimit: MOST_CARRY_BYTES };
    carry.addContentTypeParser('application/gzip', limit, async (_request: unknown, body: Buffer) => body);
    carry.setErrorHandler((error: FastifyError, _request, reply) =>
      answerError(app, error, reply, problemOf),
    );
    const accounts = new WeakMap<FastifyRequest, Account>();
    carry.addHook('onRequest', async (request) => {
      const account = await findAccount(request);
      if (!account) throw signInNeeded();
      accounts.set(request, account);
    });
    const userOf = (request: FastifyRequest) => {
      const account = accounts.get(request);
      if (!account) throw signInNeeded();
      return account.userId;
    };

    carry.get('/carry', async (request, reply) => {
      const { team: teamId, event: eventId } = carryQuery.parse(request.query);
      const claim = { teamId, userId: userOf(request) };
      const event = await withTeam(store, claim, (tx) => takeAlong(tx, eventId, clock.now()));
      const log = await packCarried(event);
      const start = Buffer.from(firstLine(log.length));
      const { pictures } = event.head;
      const bytes = pictures.reduce((sum, picture) => sum + picture.bytes, start.length + log.length);
      return reply
        .type('application/octet-stream')
        .header('content-length', bytes)
        .header('content-disposition', `attachment; filename="${nameOf(event.head)}"`)
        .header('cache-control', 'no-store')
        .send(Readable.from(partsOf(start, log, pictures)));

      async function* partsOf(...[line, gzipped, follow]: [Buffer, Buffer, CarriedHead['pictures']]) {
        yield line;
        yield gzipped;
        for (const { photoId } of follow)
          yield Buffer.from(await withTeam(store, claim, (tx) => showPicture(tx, photoId, 'full')));
      }
    });

    carry.put('/carry', async (request, reply) => {
      const { step, person: personId } = bringInQuery.parse(request.query);
      const body = Buffer.isBuffer(request.body) ? request.body : Buffer.alloc(0);
      const file = await unpackCarried(body);
      const bringing = { store, userId: userOf(request), file, personId, now: clock.now() };
      return reply
        .header('cache-control', 'no-store')
        .send(await (step === 'look' ? lookAt : takeIn)(bringing));
    });
  });
}

/** Plain letters: what every system takes as the name of a file. */
function nameOf({ event, madeAt }: CarriedHead): string {
  const name = event.name
    .normalize('NFKD')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
  return `${name || 'event'}-${toDay(toDate(madeAt))}.${CARRY_ENDING}`;
}

function problemOf(error: FastifyError): AppError | null {
  if (error.code === 'FST_ERR_CTP_BODY_TOO_LARGE') {
    return new AppError('tooMuch', `A log of more than ${MOST_CARRY_BYTES / 1_000_000} MB is not taken.`);
  }
  if (error.name === 'ZodError') {
    return new AppError('badInput', 'That address is not complete. Go back and choose again.');
  }
  if (error.statusCode === undefined || error.statusCode >= 500) return null;
  return new AppError('badInput', 'This is no file of an event. Choose the one that the other server made.');
}
