import { type CarRecord, retirementListCells } from '@halfshaft/itinerary';
import { Sheet } from '@/components/sheet';
import { Table } from '@/components/table';
import { isJustRunning, runningInWords } from './running-in-words';

const CAR_HEADING = 0;

/** The list as it was saved: who simply finished or runs on in a line, the others in a table without the columns none of them needs. */
export function CarTable({ records }: { records: readonly CarRecord[] }) {
  const cameBack = new Set(records.flatMap((one) => (one.backFromSection === null ? [] : [one.carNumber])));
  const isPlain = ({ outcome, carNumber }: CarRecord) => outcome === 'finished' && !cameBack.has(carNumber);
  const finishers = records.filter(isPlain).map(({ carNumber }) => carNumber);
  const [headings = [], ...rows] = retirementListCells(
    records.filter((one) => !isPlain(one) && !isJustRunning(one)),
  );
  const columns = headings.flatMap((heading, index) => {
    if (!rows.some((row) => row[index])) return [];
    return [
      { key: heading, heading, leads: index === CAR_HEADING, cell: (row: string[]) => row[index] || null },
    ];
  });
  return (
    <Sheet title="The cars">
      {rows.length > 0 ? (
        <Table
          caption="Cars that did not simply finish"
          captionHidden
          columns={columns}
          rows={rows}
          rowKey={(row, index) => `${row[CAR_HEADING]} ${index}`}
        />
      ) : null}
      {runningInWords(records).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {finishers.length > 0 ? <p>Finished without a stop: {finishers.join(', ')}.</p> : null}
    </Sheet>
  );
}
