import type { CarOutline, PartOutline, ReliabilityOfTeam } from '@halfshaft/contract';
import { BarTable } from '@/components/bar-table';
import { EmptyState } from '@/components/empty-state';
import { Sheet } from '@/components/sheet';
import { drivenInWords } from './amount-driven';
import { PartSheet } from './part-sheet';
import { partRows, placeRows } from './place-rows';

interface CarReliabilityProps {
  teamId: string;
  car: CarOutline;
  events: ReliabilityOfTeam['events'];
}

/** One car: what failed most and where, then part by part. */
export function CarReliability({ teamId, car, events }: CarReliabilityProps) {
  const places = placeRows(car);
  const parts = car.parts.toSorted((one, other) => other.failures.length - one.failures.length);
  return (
    <>
      <Sheet title={car.name}>
        <p>{overview(car)}</p>
        {car.parts.length > 0 ? (
          <BarTable caption="By part" nameHeading="Part" amountHeading="Failed" rows={partRows(car)} />
        ) : null}
        {places.length > 0 ? (
          <BarTable
            caption="By place, snags among them"
            nameHeading="Place"
            amountHeading="Seen"
            rows={places}
          />
        ) : null}
      </Sheet>
      {parts.length === 0 ? (
        <EmptyState title="Nothing has failed yet">
          A part counts as failed when a round or job finds “needs work” or a temporary repair, when a part
          that was changed was worn out or broke, and when it broke on the road or put the car out.
        </EmptyState>
      ) : null}
      {parts.map((part: PartOutline) => (
        <PartSheet key={part.partId} teamId={teamId} carId={car.carId} part={part} events={events} />
      ))}
    </>
  );
}

function overview({ stageMetres, events, soundCards }: CarOutline): string {
  const log = `${drivenInWords('stageMetres', stageMetres)} in the log, at ${events === 1 ? '1 event' : `${events} events`}`;
  const cards = soundCards === 1 ? '1 card' : `${soundCards} cards`;
  return `${log}. On ${cards} nothing was ever out of order.`;
}
