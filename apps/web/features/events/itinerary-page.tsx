'use client';

import type { EventReplica, ItineraryText } from '@halfshaft/contract';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { LoadingState } from '@/components/loading-state';
import { Notice } from '@/components/notice';
import { PageHeader } from '@/components/page-header';
import { Sheet } from '@/components/sheet';
import { api, client } from '@/lib/api';
import { ItineraryEditor } from '../itinerary/itinerary-editor';
import { itineraryToForm } from '../itinerary/itinerary-form';
import { ItineraryProblems } from '../itinerary/itinerary-problems';
import { ReadResult } from '../itinerary/read-result';
import { useRemarks } from '../itinerary/things-to-check';
import { EventPage } from './event-page';
import { LoadTrouble } from './trouble';
import { useTeam } from './use-team';

export function ItineraryPage() {
  return <EventPage>{(ids) => <ItineraryOfEvent {...ids} />}</EventPage>;
}

interface ItineraryOfEventProps {
  teamId: string;
  eventId: string;
}

function ItineraryOfEvent({ teamId, eventId }: ItineraryOfEventProps) {
  const team = useTeam(teamId);
  const event = useQuery(api.event.get.queryOptions({ teamId, eventId }));
  if (event.isPending) return <LoadingState wholePage words="Fetching the itinerary …" />;
  if (event.data === undefined) {
    return <LoadTrouble wholePage error={event.error} onTryAgain={() => event.refetch()} />;
  }
  return (
    <>
      <PageHeader
        title="Itinerary"
        above={event.data.name}
        facts={[`Version ${event.data.itineraryNumber}`, event.data.itineraryText.timeZone]}
      />
      {team?.mayManage ? (
        <NewVersion teamId={teamId} event={event.data} />
      ) : (
        <Sheet title="As it was read">
          <Remarks text={event.data.itineraryText} />
          <ReadResult itinerary={event.data.itinerary} />
        </Sheet>
      )}
    </>
  );
}

function Remarks({ text }: { text: ItineraryText }) {
  return <ItineraryProblems problems={useRemarks(text)} />;
}

interface NewVersionProps {
  teamId: string;
  event: EventReplica;
}

function NewVersion({ teamId, event }: NewVersionProps) {
  const [saved, setSaved] = useState<string | null>(null);
  const queries = useQueryClient();
  const { eventId, name, itineraryNumber } = event;
  return (
    <ItineraryEditor
      keptAs={`itinerary.${eventId}`}
      start={itineraryToForm(name, event.itineraryText)}
      withName={false}
      saveWords={`Save as version ${itineraryNumber + 1}`}
      onSave={async (_name, itinerary) => {
        const answer = await client.event.saveItinerary.mutate({ teamId, eventId, itinerary });
        if (answer.ok) {
          setSaved(
            answer.number === itineraryNumber
              ? `It says the same as version ${answer.number}, so no new version was made.`
              : `This is version ${answer.number} now. Every service uses it; the earlier versions are kept.`,
          );
          await Promise.all([
            queries.invalidateQueries({ queryKey: api.event.get.queryKey({ teamId, eventId }) }),
            queries.invalidateQueries({ queryKey: api.event.list.queryKey({ teamId }) }),
          ]);
        }
        return answer;
      }}
      outcome={
        saved === null ? null : (
          <Notice title="Saved" spoken>
            {saved}
          </Notice>
        )
      }
    />
  );
}
