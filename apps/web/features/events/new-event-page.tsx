'use client';

import { useQueryClient } from '@tanstack/react-query';
import { useRouter } from 'next/navigation';
import { EmptyState } from '@/components/empty-state';
import { PageHeader } from '@/components/page-header';
import { api, client } from '@/lib/api';
import { ItineraryEditor } from '../itinerary/itinerary-editor';
import { useNewItinerary } from '../itinerary/use-new-itinerary';
import { eventAddress } from './addresses';
import { PublishedEvents } from './published-events';
import { TeamPage } from './team-page';
import { useTeam } from './use-team';

export function NewEventPage() {
  return <TeamPage>{(teamId) => <NewEvent teamId={teamId} />}</TeamPage>;
}

function NewEvent({ teamId }: { teamId: string }) {
  const team = useTeam(teamId);
  const router = useRouter();
  const queries = useQueryClient();
  const start = useNewItinerary();

  async function goTo(eventId: string) {
    await queries.invalidateQueries({ queryKey: api.event.list.queryKey({ teamId }) });
    router.push(eventAddress(teamId, eventId));
  }

  return (
    <>
      <PageHeader title="New event" above={team?.name} />
      {team?.mayManage ? <PublishedEvents teamId={teamId} onTakenOver={goTo} /> : null}
      {team?.mayManage ? <h2>Or bring in an itinerary</h2> : null}
      {team?.mayManage === false ? (
        <EmptyState title="New events are for managers">
          A manager of the team makes the event; you then see it on your first page.
        </EmptyState>
      ) : null}
      {start === null || !team?.mayManage ? null : (
        <ItineraryEditor
          keptAs={`event.new.${teamId}`}
          start={start}
          withName
          withQuickForm
          saveWords="Save the event"
          onSave={async (name, itinerary) => {
            const answer = await client.event.create.mutate({ teamId, name, itinerary });
            if (answer.ok) await goTo(answer.eventId);
            return answer;
          }}
        />
      )}
    </>
  );
}
