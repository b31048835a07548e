'use client';

import { useQueryClient } from '@tanstack/react-query';
import { useRouter } from 'next/navigation';
import { LinkButton } from '@/components/link-button';
import { PageHeader } from '@/components/page-header';
import { api, client } from '@/lib/api';
import { ItineraryEditor } from '../itinerary/itinerary-editor';
import { itineraryToForm } from '../itinerary/itinerary-form';
import { useNewItinerary } from '../itinerary/use-new-itinerary';
import { organiserAddress } from './organiser-addresses';
import { type OrganiserEvent, standingInWords } from './organiser-event';

export interface EventEditorProps {
  organiserId: string;
  organiserName: string | undefined;
  /** Null for a new one. */
  event: OrganiserEvent | null;
}

/** Name and itinerary of one event; each save is a new version. */
export function EventEditor({ organiserId, organiserName, event }: EventEditorProps) {
  const router = useRouter();
  const queries = useQueryClient();
  const blank = useNewItinerary();
  const start = event?.itineraryText ? itineraryToForm(event.name, event.itineraryText) : blank;
  const publishedEventId = event?.publishedEventId ?? null;
  return (
    <>
      <PageHeader
        title={event?.name ?? 'New event'}
        above={organiserName}
        facts={event ? [standingInWords(event)] : []}
        actions={<LinkButton href={organiserAddress(organiserId)}>Back to the events</LinkButton>}
      />
      {start === null ? null : (
        <ItineraryEditor
          key={`${publishedEventId} ${event?.versions}`}
          keptAs={`organiser.${organiserId}.${publishedEventId ?? 'new'}`}
          start={start}
          withName
          withQuickForm={event === null}
          saveWords={event ? `Save as version ${event.versions + 1}` : 'Save the event'}
          onSave={async (name, itinerary) => {
            const answer = await client.organiser.saveEvent.mutate({
              organiserId,
              publishedEventId,
              name,
              itinerary,
            });
            if (answer.ok) {
              await queries.invalidateQueries({ queryKey: api.organiser.events.queryKey({ organiserId }) });
              router.push(organiserAddress(organiserId));
            }
            return answer;
          }}
        />
      )}
    </>
  );
}
