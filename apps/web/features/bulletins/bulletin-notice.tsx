'use client';

import { useQuery } from '@tanstack/react-query';
import { LinkButton } from '@/components/link-button';
import { Notice } from '@/components/notice';
import { api } from '@/lib/api';
import { bulletinAddress } from '../events/addresses';
import { changesInWords } from './bulletin-words';

const FRESH_MILLIS = 60_000;

/**
 * Says that the organiser has issued a bulletin that the team has not accepted; nothing while there is none, or while it
 * cannot be known: the page it stands on is about something else.
 */
export function BulletinNotice({ teamId, eventId }: { teamId: string; eventId: string }) {
  const options = api.bulletin.open.queryOptions({ teamId, eventId });
  const { data: bulletin } = useQuery({ ...options, staleTime: FRESH_MILLIS });
  if (!bulletin) return null;
  return (
    <Notice title={`Bulletin ${bulletin.number} from ${bulletin.organiserName}`}>
      <p>{changesInWords(bulletin)} The team still goes by the itinerary it had before.</p>
      <div>
        <LinkButton href={bulletinAddress(teamId, eventId)}>Read bulletin {bulletin.number}</LinkButton>
      </div>
    </Notice>
  );
}
