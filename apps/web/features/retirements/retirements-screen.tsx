import type { getRetirementsOutput } from '@halfshaft/contract';
import { retirementListCells } from '@halfshaft/itinerary';
import type { z } from 'zod';
import type { OwnEvent } from '../organiser/list-page';
import { ListScreen } from '../organiser/list-screen';
import { EventReport } from './event-report';
import { ListHelp } from './list-help';
import { RetirementForm } from './retirement-form';

export interface RetirementsScreenProps {
  own: OwnEvent;
  event: z.infer<typeof getRetirementsOutput>;
}

/** The list of one event to paste, and below it what it tells; on paper the report alone. */
export function RetirementsScreen({ own, event }: RetirementsScreenProps) {
  const { itinerary, saved } = event;
  return (
    <ListScreen
      title="Who started, who stopped, and why"
      own={own}
      event={event}
      facts={saved ? [`${saved.field.stageKm.toFixed(2)} stage km`] : []}
      saved={saved}
      purpose="It tells how often cars stop and why, from the first event on."
      listTitle="The list"
      download={
        saved && {
          words: 'Download the list',
          name: 'retirements',
          cells: () => retirementListCells(saved.records),
        }
      }
      form={
        <>
          <RetirementForm key={own.publishedEventId} own={own} itinerary={itinerary} saved={saved} />
          <ListHelp />
        </>
      }
    >
      {saved ? <EventReport saved={saved} /> : null}
    </ListScreen>
  );
}
