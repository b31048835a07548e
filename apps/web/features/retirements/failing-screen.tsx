import type { FieldOfEvent, retirementFiguresOutput } from '@halfshaft/contract';
import { csvText } from '@halfshaft/lifing';
import type { z } from 'zod';
import { Button } from '@/components/button';
import { EmptyState } from '@/components/empty-state';
import { LinkButton } from '@/components/link-button';
import { PageHeader } from '@/components/page-header';
import { PrintButton } from '@/components/print-button';
import { Sheet } from '@/components/sheet';
import { Table, type TableColumn } from '@/components/table';
import { dayInWords } from '@/lib/day-in-words';
import { saveTable } from '@/lib/save-file';
import { RowLink } from '../events/row-link';
import { organiserAddress, retirementsAddress } from '../organiser/organiser-addresses';
import { AlongTable } from './along-table';
import { rateCells } from './rate-cells';
import { RateTable } from './rate-table';

const TITLE = 'What keeps failing';

export interface FailingScreenProps {
  organiserId: string;
  organiserName: string | undefined;
  over: z.infer<typeof retirementFiguresOutput>;
}

/** The figures over all events that have a list, and which these are. */
export function FailingScreen({
  organiserId,
  organiserName,
  over: { events, figures, parts },
}: FailingScreenProps) {
  const isEmpty = events.length === 0;
  return (
    <>
      <PageHeader
        title={TITLE}
        above={organiserName}
        facts={isEmpty ? [] : [events.length === 1 ? '1 event' : `${events.length} events`]}
        actions={
          isEmpty ? null : (
            <>
              <PrintButton foot={`${TITLE}, ${organiserName ?? 'organiser'}`}>Print</PrintButton>
              <Button onClick={() => saveTable(TITLE, csvText(rateCells(figures)))}>
                Download the figures
              </Button>
            </>
          )
        }
      />
      {isEmpty ? (
        <EmptyState
          title="No event with a list yet"
          action={<LinkButton href={organiserAddress(organiserId)}>Events</LinkButton>}
        >
          Open a published event, choose “Who stopped, and why” and paste who started and who stopped. One
          event is enough to begin.
        </EmptyState>
      ) : (
        <>
          <RateTable figures={figures} parts={parts} withGrowth />
          <AlongTable along={figures.along} />
          <CountedEvents organiserId={organiserId} events={events} />
        </>
      )}
    </>
  );
}

function CountedEvents({ organiserId, events }: { organiserId: string; events: readonly FieldOfEvent[] }) {
  const columns: TableColumn<FieldOfEvent>[] = [
    {
      key: 'name',
      heading: 'Event',
      leads: true,
      cell: ({ publishedEventId, name }) => (
        <RowLink href={retirementsAddress(organiserId, publishedEventId)}>{name}</RowLink>
      ),
    },
    { key: 'day', heading: 'First day', cell: ({ startsOn }) => dayInWords(startsOn) },
    { key: 'km', heading: 'Stage km', figures: true, cell: ({ stageKm }) => stageKm.toFixed(2) },
    { key: 'starters', heading: 'Started', figures: true, cell: ({ cars }) => cars.starters },
    { key: 'finished', heading: 'Finished', figures: true, cell: ({ cars }) => cars.finished },
    { key: 'left', heading: 'Left out', figures: true, cell: ({ leftOut }) => leftOut.length },
  ];
  return (
    <Sheet title="Events counted">
      <Table
        caption="Events counted"
        captionHidden
        columns={columns}
        rows={events}
        rowKey={({ publishedEventId }) => publishedEventId}
      />
    </Sheet>
  );
}
