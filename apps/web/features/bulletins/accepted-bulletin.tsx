import { LinkButton } from '@/components/link-button';
import { Notice } from '@/components/notice';
import { PageHeader } from '@/components/page-header';
import { Stack } from '@/components/stack';
import { eventAddress, itineraryAddress } from '../events/addresses';
import type { LoadedWork } from '../work/work-page';

export interface Accepted {
  bulletinNumber: number;
  itineraryNumber: number;
}

/** In place of the bulletin once it is accepted: what that did, and where it is seen. */
export function AcceptedBulletin({ work, accepted }: { work: LoadedWork; accepted: Accepted }) {
  const { teamId, eventId, replica } = work;
  const { bulletinNumber, itineraryNumber } = accepted;
  return (
    <>
      <PageHeader above={replica.name} title={`Bulletin ${bulletinNumber}`} facts={['accepted']} />
      <Notice title="Accepted" spoken>
        <p>
          It is version {itineraryNumber} of your itinerary now. Every service, sheet and clock goes by it.
          Print again what is on paper.
        </p>
        <Stack across gap="small">
          <LinkButton look="main" href={eventAddress(teamId, eventId)}>
            To the event
          </LinkButton>
          <LinkButton href={itineraryAddress(teamId, eventId)}>See the itinerary</LinkButton>
        </Stack>
      </Notice>
    </>
  );
}
