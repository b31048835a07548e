'use client';

import { carryAddress } from '@halfshaft/contract';
import { formatClock, formatDay } from '@halfshaft/itinerary';
import { useQuery } from '@tanstack/react-query';
import { buttonClass } from '@/components/button';
import { LinkButton } from '@/components/link-button';
import { Sheet } from '@/components/sheet';
import { Stack } from '@/components/stack';
import { api } from '@/lib/api';
import { BRING_IN_ADDRESS } from '../events/addresses';
import { ReportLines } from './report-lines';

interface CarrySheetProps {
  teamId: string;
  eventId: string;
  mayManage: boolean;
}

/** The way of the event to a server without internet and back, and what came in that way. */
export function CarrySheet({ teamId, eventId, mayManage }: CarrySheetProps) {
  const { data: bringIns = [] } = useQuery(api.bringIn.list.queryOptions({ teamId, eventId }));
  if (!mayManage && bringIns.length === 0) return null;
  return (
    <Sheet title="Take it along, bring it home">
      {mayManage ? (
        <>
          <p>
            For the laptop in the van: save this event as a file, and bring the file in there. After the event
            save it there and bring it in here. Nothing comes in twice, whatever you repeat.
          </p>
          <Stack gap="small" across>
            {/* Not a link of the app: the server answers with a file. */}
            <a className={buttonClass('plain', false)} href={carryAddress(teamId, eventId)} download>
              Save this event as a file
            </a>
            <LinkButton href={BRING_IN_ADDRESS}>Bring a file in</LinkButton>
          </Stack>
        </>
      ) : null}
      {bringIns.map(({ id, broughtBy, broughtAt, report }) => (
        <section key={id}>
          <h3>
            {whenInWords(broughtAt)}, brought in by {broughtBy}
          </h3>
          <ReportLines report={report} />
        </section>
      ))}
    </Sheet>
  );
}

/** By this device's own clock, since it was done at a desk. */
function whenInWords(at: number): string {
  const { timeZone } = Intl.DateTimeFormat().resolvedOptions();
  const seconds = Math.floor(at / 1000);
  return `${formatDay(seconds, timeZone)}, ${formatClock(seconds, timeZone)}`;
}
