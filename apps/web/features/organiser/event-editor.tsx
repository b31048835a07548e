'use client';

import { useQueryClient } from '@tanstack/react-query';
import { useRouter } from 'next/navigation';
import { useRef } from 'react';
import { LinkButton } from '@/components/link-button';
import { PageHeader } from '@/components/page-header';
import { api, client } from '@/lib/api';
import { dayInWords } from '@/lib/day-in-words';
import { BulletinDesk } from '../bulletins/bulletin-desk';
import { ItineraryEditor } from '../itinerary/itinerary-editor';
import { itineraryToForm } from '../itinerary/itinerary-form';
import { useNewItinerary } from '../itinerary/use-new-itinerary';
import { StartListSheet } from '../start-list/start-list-sheet';
import { organiserAddress, retirementsAddress, timesAddress } from './organiser-addresses';
import { type OrganiserEvent, saveWordsOf, standingInWords } from './organiser-event';

export interface EventEditorProps {
  organiserId: string;
  organiserName: string | undefined;
  /** Null for a new one. */
  event: OrganiserEvent | null;
}

/**
 * Name and itinerary of one event; each save is a new version. Of a published event that is the draft of a bulletin, so
 * what it changes is shown before it is issued.
 */
export function EventEditor({ organiserId, organiserName, event }: EventEditorProps) {
  const router = useRouter();
  const queries = useQueryClient();
  const blank = useNewItinerary();
  const desk = useRef<HTMLDivElement>(null);
  const start = event?.itineraryText ? itineraryToForm(event.name, event.itineraryText) : blank;
  const publishedEventId = event?.publishedEventId ?? null;
  const isPublished = event !== null && event.publishedAt !== null;

  async function afterSave(savedId: string) {
    await queries.invalidateQueries({ queryKey: api.organiser.events.queryKey({ organiserId }) });
    if (!isPublished) return router.push(organiserAddress(organiserId));
    const own = { organiserId, publishedEventId: savedId };
    await queries.invalidateQueries({ queryKey: api.bulletin.list.queryKey(own) });
    desk.current?.focus();
    desk.current?.scrollIntoView();
  }

  return (
    <>
      <PageHeader
        title={event?.name ?? 'New event'}
        above={organiserName}
        facts={event ? [dayInWords(event.startsOn), standingInWords(event)] : []}
        actions={
          <>
            {isPublished ? (
              <>
                <LinkButton href={retirementsAddress(organiserId, event.publishedEventId)}>
                  Who stopped, and why
                </LinkButton>
                <LinkButton href={timesAddress(organiserId, event.publishedEventId)}>
                  Times at controls
                </LinkButton>
              </>
            ) : null}
            <LinkButton href={organiserAddress(organiserId)}>Back to the events</LinkButton>
          </>
        }
      />
      {isPublished ? <BulletinDesk organiserId={organiserId} event={event} ref={desk} /> : null}
      {start === null ? null : (
        <ItineraryEditor
          // A published event stays open after saving, so its form follows the version that was saved.
          key={isPublished ? publishedEventId : `${publishedEventId} ${event?.versions}`}
          keptAs={`organiser.${organiserId}.${publishedEventId ?? 'new'}`}
          start={start}
          withName
          withQuickForm={event === null}
          saveWords={saveWordsOf(event)}
          onSave={async (name, itinerary) => {
            const answer = await client.organiser.saveEvent.mutate({
              organiserId,
              publishedEventId,
              name,
              itinerary,
            });
            if (answer.ok) await afterSave(answer.publishedEventId);
            return answer;
          }}
        />
      )}
      {publishedEventId === null ? null : (
        <StartListSheet {...{ organiserId, publishedEventId, isPublished }} />
      )}
    </>
  );
}
