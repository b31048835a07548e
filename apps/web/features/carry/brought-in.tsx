import type { TakeOutcome } from '@halfshaft/contract';
import { LinkButton } from '@/components/link-button';
import { Notice } from '@/components/notice';
import { Sheet } from '@/components/sheet';
import { SentenceList } from '../bulletins/sentence-list';
import { eventAddress } from '../events/addresses';
import type { PicturesSent } from './event-file';
import { ReportLines } from './report-lines';
import { counted } from './report-words';

/** What came of it. The event's page keeps the same words. */
export function BroughtIn({ outcome, sent }: { outcome: TakeOutcome; sent: PicturesSent }) {
  return (
    <Sheet title="It is in">
      <div role="status">
        <ReportLines report={outcome.report} />
        {sent.came > 0 ? <p>{counted(sent.came, 'photo')} came too.</p> : null}
      </div>
      {sent.waiting.length > 0 ? (
        <Notice kind="warning" title={`${counted(sent.waiting.length, 'photo')} did not come`}>
          <SentenceList sentences={[...new Set(sent.waiting)]} />
          <p>
            They stay in the file. Bring it in again when that is mended: only the missing photos are sent.
          </p>
        </Notice>
      ) : null}
      <div>
        <LinkButton look="main" href={eventAddress(outcome.teamId, outcome.eventId)}>
          Open the event
        </LinkButton>
      </div>
    </Sheet>
  );
}
