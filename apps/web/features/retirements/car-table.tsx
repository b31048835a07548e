import { type CarRecord, retirementListCells } from '@halfshaft/itinerary';
import { Sheet } from '@/components/sheet';
import { Table } from '@/components/table';

const CAR_HEADING = 0;

/** The list as it was saved. Columns that no car needs are left away. */
export function CarTable({ records }: { records: readonly CarRecord[] }) {
  const [headings = [], ...rows] = retirementListCells(records);
  const columns = headings.flatMap((heading, index) => {
    if (!rows.some((row) => row[index])) return [];
    return [
      { key: heading, heading, leads: index === CAR_HEADING, cell: (row: string[]) => row[index] || '–' },
    ];
  });
  return (
    <Sheet title="The cars">
      <Table
        caption="What became of each car"
        captionHidden
        columns={columns}
        rows={rows}
        rowKey={(row, index) => `${row[CAR_HEADING]} ${index}`}
      />
    </Sheet>
  );
}
