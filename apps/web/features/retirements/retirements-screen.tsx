import type { getRetirementsOutput } from '@halfshaft/contract';
import { retirementListCells } from '@halfshaft/itinerary';
import { csvText } from '@halfshaft/lifing';
import type { z } from 'zod';
import { Button } from '@/components/button';
import { LinkButton } from '@/components/link-button';
import { PageHeader } from '@/components/page-header';
import { PrintButton } from '@/components/print-button';
import { Sheet } from '@/components/sheet';
import { dayInWords } from '@/lib/day-in-words';
import { saveTable } from '@/lib/save-file';
import { savedInWords } from '../bulletins/bulletin-words';
import { organiserEventAddress } from '../organiser/organiser-addresses';
import { EventReport } from './event-report';
import { ListHelp } from './list-help';
import { RetirementForm } from './retirement-form';

const TITLE = 'Who started, who stopped, and why';

export interface RetirementsScreenProps {
  own: { organiserId: string; publishedEventId: string };
  event: z.infer<typeof getRetirementsOutput>;
}

/** The list of one event to paste, and below it what it tells; on paper the report alone. */
export function RetirementsScreen({ own, event }: RetirementsScreenProps) {
  const { name, startsOn, timeZone, itinerary, saved } = event;
  return (
    <>
      <PageHeader
        title={TITLE}
        above={name}
        facts={[dayInWords(startsOn), ...(saved ? [`${saved.field.stageKm.toFixed(2)} stage km`] : [])]}
        actions={
          <>
            {saved ? (
              <>
                <PrintButton foot={`${TITLE}, ${name}`}>Print</PrintButton>
                <Button
                  onClick={() =>
                    saveTable(`${name} retirements`, csvText(retirementListCells(saved.records)))
                  }
                >
                  Download the list
                </Button>
              </>
            ) : null}
            <LinkButton href={organiserEventAddress(own.organiserId, own.publishedEventId)}>
              Back to the event
            </LinkButton>
          </>
        }
      />
      <div className="screen-only">
        <Sheet title="The list">
          <p>
            {saved
              ? `${savedInWords(saved.savedAt, timeZone)}, by ${saved.savedByYou ? 'you' : 'another person of the organiser'}. Saving puts the whole list in place of it. No team sees it.`
              : 'Nothing is saved for this event yet. It tells how often cars stop and why, from the first event on. No team sees it.'}
          </p>
          <RetirementForm key={own.publishedEventId} own={own} itinerary={itinerary} saved={saved} />
          <ListHelp />
        </Sheet>
      </div>
      {saved ? <EventReport saved={saved} /> : null}
    </>
  );
}
