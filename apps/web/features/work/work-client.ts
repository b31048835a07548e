import type { EventReplica, Problem, PushResult } from '@halfshaft/contract';
import type { LogEntry, PersonId, PushedAction } from '@halfshaft/worklog';
import { hashKey } from '@tanstack/react-query';
import { api, client, isLostConnection, problemOf, queryClient } from '@/lib/api';

/** An answer of the server, or why there is none. `lost`: it was not reached, so the same may go well later. */
export type Answer<T> = { ok: true; value: T } | { ok: false; problem: Problem; lost: boolean };

/** The log of one team at one event, as the server keeps it. Tests put their own in. */
export interface WorkClient {
  getReplica(): Promise<Answer<EventReplica>>;
  /** A page of entries after this seq. `lastSeq` beyond the page's last one says that there is more. */
  pull(since: number): Promise<Answer<{ entries: LogEntry[]; lastSeq: number }>>;
  /** `enteredBy`: whose they are. Under anybody else's sign-in the server takes none of them. */
  push(
    actions: readonly PushedAction[],
    enteredBy: PersonId,
  ): Promise<Answer<{ results: PushResult[]; lastSeq: number }>>;
}

/** On a weak signal a request can hang for minutes; sending again is harmless, waiting is not. */
const MOST_WAIT_MILLIS = 20_000;

interface PageAnswers {
  client: Pick<typeof client, 'event' | 'work'>;
  queryClient: Pick<typeof queryClient, 'fetchQuery'>;
}

/** `by`: the page's way to the server and the answers it has; tests that open many pages give each its own. */
export function workClientOf(
  teamId: string,
  eventId: string,
  by: PageAnswers = { client, queryClient },
): WorkClient {
  const of = { teamId, eventId };
  return {
    getReplica: () =>
      answerOf((signal) =>
        // Through the page's own answers, so that a page that shows the event too asks once.
        by.queryClient.fetchQuery({
          queryKey: api.event.get.queryKey(of),
          queryFn: () => by.client.event.get.query(of, { signal }),
          retry: false,
        }),
      ),
    pull: (since) => answerOf((signal) => by.client.work.pull.query({ ...of, since }, { signal })),
    push: (actions, enteredBy) =>
      answerOf((signal) =>
        by.client.work.push.mutate({ ...of, enteredBy, actions: actions.map(toPushed) }, { signal }),
      ),
  };
}

/** Calls back when a form has changed the event; after the page's own queries, so that one request serves all. */
export function hearEventChange(teamId: string, eventId: string, told: () => void): () => void {
  const hash = hashKey(api.event.get.queryKey({ teamId, eventId }));
  return queryClient.getQueryCache().subscribe((heard) => {
    const isOld = heard.type === 'updated' && heard.action.type === 'invalidate';
    if (isOld && heard.query.queryHash === hash) setTimeout(told, 0);
  });
}

function toPushed(action: PushedAction) {
  return { ...action, args: action.args as Record<string, unknown> };
}

async function answerOf<T>(ask: (signal: AbortSignal) => Promise<T>): Promise<Answer<T>> {
  try {
    return { ok: true, value: await ask(AbortSignal.timeout(MOST_WAIT_MILLIS)) };
  } catch (error) {
    return { ok: false, problem: problemOf(error), lost: isLostConnection(error) };
  }
}
