import type { VisitProposal, VisitQuestion } from '@halfshaft/bayplan';
import type { PersonId } from '@halfshaft/worklog';
import { useQuery } from '@tanstack/react-query';
import { useMemo } from 'react';
import { client } from '@/lib/api';
import { visitTimes } from '../control/visit-times';
import { judgeVisit } from '../service/judge-visit';
import type { Visit } from '../service/visit';
import type { LoadedWork } from '../work/work-page';
import { questionOf } from './visit-question';

/**
 * Who does what when at a service; undefined while it is being worked out. Where the server gives no plan, out of coverage
 * or asked too much, the device makes the same one itself, only slower.
 */
export function useVisitPlan(
  { replica, state, teamId, eventId }: LoadedWork,
  visit: Visit,
  people: readonly PersonId[],
): VisitProposal | undefined {
  const { entryId } = visit.entry;
  const serviceId = visit.service.id;
  const question = useMemo(() => {
    const { workSeconds } = visitTimes(replica, state, visit);
    return questionOf(judgeVisit(replica, state, visit), visit, workSeconds, people);
  }, [replica, state, visit, people]);
  const { data } = useQuery({
    queryKey: ['bayPlan', { teamId, eventId, entryId, serviceId }, question],
    queryFn: async ({ signal }) => {
      try {
        const { workSeconds, people: personIds } = question;
        const work = question.work.map(({ card, mustDo }) => ({ cardId: card.id, mustDo }));
        const asked = { teamId, eventId, entryId, serviceId, workSeconds, personIds: [...personIds], work };
        return await client.bayPlan.propose.mutate(asked, { signal });
      } catch {
        signal.throwIfAborted();
        return planOnDevice(question, signal);
      }
    },
    staleTime: Number.POSITIVE_INFINITY,
  });
  return data;
}

/** Fetched only when it is needed: a page that is served has its plan from the server. */
async function planOnDevice(question: VisitQuestion, signal: AbortSignal): Promise<VisitProposal> {
  const { planHere } = await import('./plan-here');
  return planHere(question, signal);
}
