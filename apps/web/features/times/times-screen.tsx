import type { getTimesOutput } from '@halfshaft/contract';
import { controlArrivals, serviceLeaves, timeListCells } from '@halfshaft/itinerary';
import type { z } from 'zod';
import { Notice } from '@/components/notice';
import { Sheet } from '@/components/sheet';
import type { OwnEvent } from '../organiser/list-page';
import { ListScreen } from '../organiser/list-screen';
import { ControlReport } from './control-report';
import { LateCars } from './late-cars';
import { LatenessReport } from './lateness-report';
import { TimesForm } from './times-form';
import { TimesHelp } from './times-help';
import { WhoLostTime } from './who-lost-time';

export interface TimesScreenProps {
  own: OwnEvent;
  event: z.infer<typeof getTimesOutput>;
}

/** The times of one event to paste, and below them how late cars were; on paper the report alone. */
export function TimesScreen({ own, event }: TimesScreenProps) {
  const { itinerary, saved } = event;
  return (
    <ListScreen
      title="Times at controls"
      own={own}
      event={event}
      saved={saved}
      purpose="It tells how late cars leave their services and come to their controls, and why."
      listTitle="The times"
      download={
        saved && {
          words: 'Download the times',
          name: 'times',
          cells: () => timeListCells(saved.passes),
        }
      }
      form={
        <>
          <TimesForm key={own.publishedEventId} own={own} itinerary={itinerary} saved={saved} />
          <TimesHelp />
        </>
      }
    >
      {saved ? <Told saved={saved} itinerary={itinerary} /> : null}
    </ListScreen>
  );
}

interface ToldProps {
  saved: NonNullable<TimesScreenProps['event']['saved']>;
  itinerary: TimesScreenProps['event']['itinerary'];
}

/** What the saved times tell, as far as the itinerary still has their controls. */
function Told({ saved: { passes, maxLateMinutes }, itinerary }: ToldProps) {
  const points = new Set(itinerary.points.map(({ id }) => id));
  const gone = [...new Set(passes.map(({ controlId }) => controlId))].filter((id) => !points.has(id));
  const leaves = serviceLeaves(passes, itinerary);
  const arrivals = controlArrivals(passes, itinerary);
  return (
    <>
      {gone.length > 0 ? (
        <Notice kind="warning">
          Since the times were saved the itinerary has changed: it has no more {gone.join(', ')}. Times there
          count nowhere. Mend their rows and save again.
        </Notice>
      ) : null}
      <Sheet title="Late out of service">
        <LatenessReport leaves={leaves} itinerary={itinerary} maxLateMinutes={maxLateMinutes} />
        <LateCars leaves={leaves} />
      </Sheet>
      <Sheet title="Late at the other controls">
        <ControlReport arrivals={arrivals} itinerary={itinerary} maxLateMinutes={maxLateMinutes} />
        <WhoLostTime arrivals={arrivals} />
      </Sheet>
    </>
  );
}
