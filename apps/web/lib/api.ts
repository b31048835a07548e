import type { AppRouter } from '@halfshaft/api/router';
import type { Problem } from '@halfshaft/contract';
import { QueryClient } from '@tanstack/react-query';
import { createTRPCClient, httpBatchLink, TRPCClientError } from '@trpc/client';
import { createTRPCOptionsProxy } from '@trpc/tanstack-react-query';

const MOST_RETRIES = 2;
/** Two weeks: an event, the days before it and the way home. What is dropped here is dropped on the device too. */
export const KEEP_MILLIS = 14 * 24 * 60 * 60 * 1000;

/** An answer that names a problem will be the same the second time; only a lost connection is worth another try. */
export const queryClient = new QueryClient({
  defaultOptions: {
    queries: {
      retry: (failures, error) => failures < MOST_RETRIES && isLostConnection(error),
      networkMode: 'always',
      gcTime: KEEP_MILLIS,
    },
    mutations: { networkMode: 'always' },
  },
});

export const client = createTRPCClient<AppRouter>({ links: [httpBatchLink({ url: '/trpc', maxItems: 8 })] });

/** `useQuery(api.event.get.queryOptions({ teamId, eventId }))`, `useMutation(api.car.create.mutationOptions())`. */
export const api = createTRPCOptionsProxy<AppRouter>({ client, queryClient });

const NO_CONNECTION: Problem = {
  code: 'unexpected',
  message: 'The server cannot be reached. What you typed is kept; try again when you have a connection.',
  fields: [],
};

/** What to tell a person of an error of a query or mutation. */
export function problemOf(error: unknown): Problem {
  if (!(error instanceof TRPCClientError)) return NO_CONNECTION;
  const data: unknown = error.data;
  return isProblemData(data) ? data.problem : NO_CONNECTION;
}

export function isLostConnection(error: unknown): boolean {
  return problemOf(error) === NO_CONNECTION;
}

function isProblemData(data: unknown): data is { problem: Problem } {
  return typeof data === 'object' && data !== null && 'problem' in data;
}
