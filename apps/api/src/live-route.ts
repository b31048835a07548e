import { eventId, teamId } from '@halfshaft/contract';
import { NotAMember, type Store } from '@halfshaft/store';
import type { FastifyInstance, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { UNEXPECTED_SENTENCE } from './errors';
import type { Growth, LiveLog } from './features/work/live';
import { mayWatch } from './features/work/service';
import type { Account } from './trpc';

const HEARTBEAT_MS = 15_000;
const query = z.object({ team: teamId, event: eventId });

interface LiveParts {
  store: Store;
  live: LiveLog;
  findAccount(request: FastifyRequest): Promise<Account | null>;
}

/**
 * `/live?team=…&event=…`: a stream that says how far the log has grown, with the new entries before it where they are few;
 * everything else clients pull. Never compressed, and a heartbeat keeps proxies from closing it.
 */
export function addLiveRoute(app: FastifyInstance, { store, live, findAccount }: LiveParts): void {
  app.get('/live', async (request, reply) => {
    const parsed = query.safeParse(request.query);
    if (!parsed.success) return reply.code(400).send({ message: 'Say which team and event to watch.' });
    const { team, event } = parsed.data;
    const answer = await askWhoWatches(async () => {
      const account = await findAccount(request);
      if (!account) return 'stranger';
      const { userId } = account;
      return (await mayWatch(store, { teamId: team, userId }, event)) ? { userId } : 'notYours';
    });
    if (answer instanceof Error) {
      app.log.error(answer);
      return reply.code(503).send({ message: UNEXPECTED_SENTENCE });
    }
    if (answer === 'stranger') return reply.code(401).send({ message: 'Sign in to watch an event.' });
    if (answer === 'notYours')
      return reply.code(404).send({ message: 'That event does not exist, or it is not yours.' });
    reply.hijack();
    const stream = reply.raw;
    // Whoever went away while the database was asked is never heard to close.
    if (stream.destroyed) return;
    stream.writeHead(200, {
      'content-type': 'text/event-stream',
      'cache-control': 'no-store',
      'x-accel-buffering': 'no',
    });
    stream.write('data: 0\n\n');
    const beat = setInterval(() => stream.write(': still here\n\n'), HEARTBEAT_MS);
    // Nothing may be written once it is ended, also before it has closed.
    const leave = () => {
      clearInterval(beat);
      unsubscribe();
    };
    const unsubscribe = live.subscribe(
      { teamId: team, eventId: event },
      {
        userId: answer.userId,
        hear: (growth) => stream.write(blocksOf(growth, stream.writableNeedDrain)),
        end: () => {
          leave();
          stream.end();
        },
      },
    );
    stream.on('close', leave);
  });
}

/** Whoever is slow to read gets no content piled up for them: they pull when they come to it. */
function blocksOf({ seq, entries }: Growth, isSlow: boolean): string {
  const content = entries === null || isSlow ? '' : `event: entries\ndata: ${entries}\n\n`;
  return `${content}data: ${seq}\n\n`;
}

type Answer = { userId: string } | 'stranger' | 'notYours';

/** A database that is away says nothing of whose event it is: the error is handed back, to be told apart from a "no". */
async function askWhoWatches(ask: () => Promise<Answer>): Promise<Answer | Error> {
  try {
    return await ask();
  } catch (error) {
    if (error instanceof NotAMember) return 'notYours';
    return error instanceof Error ? error : new Error('askWhoWatches: something that is no error was thrown');
  }
}
