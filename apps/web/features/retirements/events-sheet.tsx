import type { FieldOfEvent, RetirementFigures } from '@halfshaft/contract';
import { Disclosure } from '@/components/disclosure';
import { Sheet } from '@/components/sheet';
import { Table, type TableColumn } from '@/components/table';
import { dayInWords } from '@/lib/day-in-words';
import { RowLink } from '../events/row-link';
import { retirementsAddress } from '../organiser/organiser-addresses';
import { RateBar, topOfRates } from './rate-bar';

type Rate = RetirementFigures['figures']['rates']['all'];
interface EventRow {
  event: FieldOfEvent;
  rate: Rate;
}

const NAME = 'Event';
const EVERY_FIGURE: TableColumn<EventRow>[] = [
  { key: 'name', heading: NAME, leads: true, cell: ({ event }) => event.name },
  { key: 'day', heading: 'First day', cell: ({ event }) => dayInWords(event.startsOn) },
  { key: 'km', heading: 'Stage km', figures: true, cell: ({ event }) => event.stageKm.toFixed(2) },
  { key: 'starters', heading: 'Started', figures: true, cell: ({ event }) => event.cars.starters },
  { key: 'finished', heading: 'Finished', figures: true, cell: ({ event }) => event.cars.finished },
  { key: 'left', heading: 'Left out', figures: true, cell: ({ event }) => event.leftOut.length },
];

export interface EventsSheetProps {
  organiserId: string;
  /** In the order they were held. */
  events: readonly FieldOfEvent[];
  perEvent: readonly Rate[];
}

/** The events one below the other, with how often cars stopped at each, drawn to one scale. */
export function EventsSheet({ organiserId, events, perEvent }: EventsSheetProps) {
  const rows = events.flatMap((event, index) => {
    const rate = perEvent[index];
    return rate ? [{ event, rate }] : [];
  });
  const top = topOfRates(perEvent);
  const columns: TableColumn<EventRow>[] = [
    {
      key: 'name',
      heading: NAME,
      leads: true,
      cell: ({ event: { publishedEventId, name } }) => (
        <RowLink href={retirementsAddress(organiserId, publishedEventId)}>{name}</RowLink>
      ),
    },
    { key: 'stops', heading: 'Stops', figures: true, cell: ({ rate }) => rate.stops },
    { key: 'rate', heading: 'Per 1,000 stage km', cell: ({ rate }) => <RateBar rate={rate} top={top} /> },
  ];
  const rowKey = ({ event }: EventRow) => event.publishedEventId;
  return (
    <Sheet title="Event by event">
      <Table
        caption="Stops per 1,000 stage km by event"
        captionHidden
        columns={columns}
        rows={rows}
        rowKey={rowKey}
      />
      <Disclosure summary="Cars and km of each event" printOpen>
        <Table caption="Events counted" captionHidden columns={EVERY_FIGURE} rows={rows} rowKey={rowKey} />
      </Disclosure>
    </Sheet>
  );
}
