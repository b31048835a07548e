import { formatKilometres } from '@halfshaft/itinerary';
import type { CarCounts } from '@halfshaft/worklog';
import { Table, type TableColumn } from '@/components/table';
import { foundInWords } from './counts-in-words';

const COLUMNS: TableColumn<CarCounts>[] = [
  {
    key: 'km',
    heading: 'Driven',
    leads: true,
    figures: true,
    cell: ({ stageMetres }) => `${formatKilometres(stageMetres)} stage km`,
  },
  { key: 'found', heading: 'Found', cell: foundInWords },
];

/** Cars without a name, each by what it drove and what was found. */
export function CountedCars({ caption, cars }: { caption: string; cars: readonly CarCounts[] }) {
  return (
    <Table
      caption={caption}
      captionHidden
      columns={COLUMNS}
      rows={cars}
      rowKey={(_car, place) => String(place)}
    />
  );
}
