import { useQuery } from '@tanstack/react-query';
import { api } from '@/lib/api';

/** The name of an event of the team, with plain words while it is not known. */
export function useEventNames(teamId: string): (eventId: string) => string {
  const { data } = useQuery(api.event.list.queryOptions({ teamId }));
  return (eventId) => data?.find((event) => event.eventId === eventId)?.name ?? 'one event';
}
