import type { ControlArrival } from '@halfshaft/itinerary';
import { Disclosure } from '@/components/disclosure';
import { Table, type TableColumn } from '@/components/table';

const known = (minutes: number | null) => (minutes === null ? 'not known' : `${minutes} min`);
const COLUMNS: TableColumn<ControlArrival>[] = [
  { key: 'car', heading: 'Car', leads: true, cell: ({ carNumber }) => carNumber },
  { key: 'control', heading: 'Control', cell: ({ controlId }) => controlId },
  { key: 'late', heading: 'Late', figures: true, cell: ({ lateMinutes }) => known(lateMinutes) },
  {
    key: 'lost',
    heading: 'Lost on the way',
    figures: true,
    cell: ({ lostMinutes }) => known(lostMinutes),
  },
  {
    key: 'total',
    heading: 'Lost in all',
    figures: true,
    cell: ({ totalMinutes }) => known(totalMinutes),
  },
];

/** Which cars lost minutes on their way to a control, or may have, the latest first. What was brought along is left out. */
export function WhoLostTime({ arrivals }: { arrivals: readonly ControlArrival[] }) {
  const lost = arrivals
    .filter(({ lostMinutes }) => lostMinutes !== 0)
    .sort((one, other) => other.lateMinutes - one.lateMinutes);
  if (lost.length === 0) return null;
  return (
    <Disclosure summary={lost.length === 1 ? 'The car' : `Who lost time, ${lost.length} times`} printOpen>
      <Table
        caption="Cars that lost time on the way to a control"
        captionHidden
        columns={COLUMNS}
        rows={lost}
        rowKey={({ carNumber, controlId }) => `${carNumber} ${controlId}`}
      />
    </Disclosure>
  );
}
