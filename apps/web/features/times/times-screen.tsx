import type { getTimesOutput } from '@halfshaft/contract';
import { timeListCells } from '@halfshaft/itinerary';
import { csvText } from '@halfshaft/lifing';
import type { z } from 'zod';
import { Button } from '@/components/button';
import { LinkButton } from '@/components/link-button';
import { Notice } from '@/components/notice';
import { PageHeader } from '@/components/page-header';
import { PrintButton } from '@/components/print-button';
import { Sheet } from '@/components/sheet';
import { dayInWords } from '@/lib/day-in-words';
import { saveTable } from '@/lib/save-file';
import { savedInWords } from '../bulletins/bulletin-words';
import { organiserEventAddress } from '../organiser/organiser-addresses';
import { LateCars } from './late-cars';
import { LatenessReport } from './lateness-report';
import { TimesForm } from './times-form';
import { TimesHelp } from './times-help';

const TITLE = 'Times at controls';

export interface TimesScreenProps {
  own: { organiserId: string; publishedEventId: string };
  event: z.infer<typeof getTimesOutput>;
}

/** The times of one event to paste, and below them how late cars left service; on paper the report alone. */
export function TimesScreen({ own, event }: TimesScreenProps) {
  const { name, startsOn, timeZone, itinerary, saved } = event;
  const points = new Set(itinerary.points.map(({ id }) => id));
  const gone = [...new Set((saved?.passes ?? []).map(({ controlId }) => controlId))].filter(
    (id) => !points.has(id),
  );
  return (
    <>
      <PageHeader
        title={TITLE}
        above={name}
        facts={[dayInWords(startsOn)]}
        actions={
          <>
            {saved ? (
              <>
                <PrintButton foot={`${TITLE}, ${name}`}>Print</PrintButton>
                <Button onClick={() => saveTable(`${name} times`, csvText(timeListCells(saved.passes)))}>
                  Download the times
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
        <Sheet title="The times">
          <p>
            {saved
              ? `${savedInWords(saved.savedAt, timeZone)}, by ${saved.savedByYou ? 'you' : 'another person of the organiser'}. Saving puts the whole list in place of it. No team sees it.`
              : 'Nothing is saved for this event yet. It tells how late cars leave their services, and why. No team sees it.'}
          </p>
          <TimesForm key={own.publishedEventId} own={own} itinerary={itinerary} saved={saved} />
          <TimesHelp />
        </Sheet>
      </div>
      {gone.length > 0 ? (
        <Notice kind="warning">
          Since the times were saved the itinerary has changed: it has no more {gone.join(', ')}. Times there
          count nowhere. Mend their rows and save again.
        </Notice>
      ) : null}
      {saved ? (
        <Sheet title="Late out of service">
          <LatenessReport {...saved} itinerary={itinerary} />
          <LateCars passes={saved.passes} itinerary={itinerary} />
        </Sheet>
      ) : null}
    </>
  );
}
