import type { PartOutline, ReliabilityOfTeam } from '@halfshaft/contract';
import { Disclosure } from '@/components/disclosure';
import { Sheet } from '@/components/sheet';
import { Stack } from '@/components/stack';
import { Table, type TableColumn } from '@/components/table';
import { capitalise } from '@/lib/capitalise';
import { CAR_PLACE_NAMES } from '../car-plan/car-places';
import { drivenInWords } from './amount-driven';
import { LifeCurve } from './life-curve';
import { seenInWords } from './seen-in-words';
import { trendInWords } from './trend-in-words';

interface PartSheetProps {
  teamId: string;
  carId: string;
  part: PartOutline;
  events: ReliabilityOfTeam['events'];
}

/** One part of one car: how often, better or worse, how long it lasts, and what the log suggests. */
export function PartSheet({ teamId, carId, part, events }: PartSheetProps) {
  const { name, roundName, place, removed } = part;
  const where = [roundName, CAR_PLACE_NAMES[place], removed ? 'card no longer in use' : null];
  return (
    <Sheet title={capitalise(name)}>
      <Stack gap="small">
        <p>{where.filter((words) => words !== null).join(' · ')}</p>
        <p>
          <strong>{seenInWords(part)}</strong> {trendInWords(part)}
        </p>
        <LifeCurve teamId={teamId} carId={carId} part={part} />
        <Disclosure summary="Each time it was seen" printOpen>
          <EachTime part={part} events={events} />
        </Disclosure>
      </Stack>
    </Sheet>
  );
}

type Failure = PartOutline['failures'][number];

function EachTime({ part, events }: Pick<PartSheetProps, 'part' | 'events'>) {
  const nameOf = new Map(events.map((event) => [event.eventId, event.name]));
  const columns: TableColumn<Failure>[] = [
    {
      key: 'event',
      heading: 'Event',
      leads: true,
      cell: ({ eventId }) => nameOf.get(eventId) ?? 'an event',
    },
    {
      key: 'at',
      heading: 'The car had run',
      figures: true,
      cell: ({ at }) => drivenInWords(part.counter, at),
    },
    { key: 'place', heading: 'At', cell: ({ position }) => position ?? 'not said' },
  ];
  return (
    <Table
      caption={`Each time: ${part.name}`}
      captionHidden
      columns={columns}
      rows={part.failures}
      rowKey={(_, index) => String(index)}
    />
  );
}
