import type { retirementFiguresOutput, timeFiguresOutput } from '@halfshaft/contract';
import { csvText } from '@halfshaft/lifing';
import type { z } from 'zod';
import { Button } from '@/components/button';
import { EmptyState } from '@/components/empty-state';
import { LinkButton } from '@/components/link-button';
import { PageHeader } from '@/components/page-header';
import { PrintButton } from '@/components/print-button';
import { saveTable } from '@/lib/save-file';
import { organiserAddress } from '../organiser/organiser-addresses';
import { ControlsOverEvents } from '../times/controls-over-events';
import { LatenessOverEvents } from '../times/lateness-over-events';
import { AlongSheet } from './along-sheet';
import { ClassChoice } from './class-choice';
import { EventsSheet } from './events-sheet';
import { rateCells } from './rate-cells';
import { RateTable } from './rate-table';

const TITLE = 'What keeps failing';

export interface FailingScreenProps {
  organiserId: string;
  organiserName: string | undefined;
  over: z.infer<typeof retirementFiguresOutput>;
  times: z.infer<typeof timeFiguresOutput>;
  /** Null: all cars. */
  className: string | null;
  onChooseClass: (className: string | null) => void;
}

/** The figures over all events that have a list, and which these are. */
export function FailingScreen(props: FailingScreenProps) {
  const { organiserId, organiserName, over, times, className, onChooseClass } = props;
  const { events, classes, figures, parts } = over;
  const hasLists = events.length > 0;
  const title = className === null ? TITLE : `${TITLE}, class ${className}`;
  return (
    <>
      <PageHeader
        title={title}
        above={organiserName}
        facts={hasLists ? [events.length === 1 ? '1 event' : `${events.length} events`] : []}
        actions={
          hasLists ? (
            <>
              <PrintButton foot={`${title}, ${organiserName ?? 'organiser'}`}>Print</PrintButton>
              <Button onClick={() => saveTable(title, csvText(rateCells(figures)))}>
                Download the figures
              </Button>
            </>
          ) : null
        }
      />
      <ClassChoice classes={classes} chosen={className} onChoose={onChooseClass} />
      {hasLists ? (
        <>
          <RateTable figures={figures} parts={parts} withGrowth />
          <AlongSheet along={figures.along} />
          <EventsSheet organiserId={organiserId} events={events} perEvent={figures.perEvent} />
        </>
      ) : null}
      {times.events.length > 0 ? (
        <>
          <LatenessOverEvents organiserId={organiserId} over={times} />
          <ControlsOverEvents organiserId={organiserId} over={times} />
        </>
      ) : null}
      {!hasLists && times.events.length === 0 ? (
        <EmptyState
          title="No event with a list yet"
          action={<LinkButton href={organiserAddress(organiserId)}>Events</LinkButton>}
        >
          Open a published event, choose “Who stopped, and why” and paste who started and who stopped. One
          event is enough to begin.
        </EmptyState>
      ) : null}
    </>
  );
}
