import type { RetirementFigures } from '@halfshaft/contract';
import { Sheet } from '@/components/sheet';
import { Table, type TableColumn } from '@/components/table';
import { causeInWords } from './cause-words';
import { shareInWords } from './figures-in-words';

type Along = NonNullable<RetirementFigures['figures']['along']>;
type Mark = Along['marks'][number];

const HUNDRED = 100;

/** Of all that started: which share was stopped, for the first time, by which cause, by how far along. */
export function AlongTable({ along }: { along: Along | null }) {
  const [first] = along?.marks ?? [];
  if (!along || !first) return null;
  const columns: TableColumn<Mark>[] = [
    {
      key: 'distance',
      heading: 'After stage km',
      leads: true,
      cell: ({ distance }) => `${Number(distance.toFixed(1))} km`,
    },
    {
      key: 'going',
      heading: 'Not stopped',
      figures: true,
      cell: ({ going }) => `${Math.round(going * HUNDRED)} %`,
    },
    ...first.causes.map(
      ({ cause }, index): TableColumn<Mark> => ({
        key: cause,
        heading: causeInWords(cause),
        figures: true,
        cell: ({ causes }) => {
          const share = causes[index];
          return share ? shareInWords(share) : '';
        },
      }),
    ),
    { key: 'running', heading: 'Cars this far', figures: true, cell: ({ running }) => running },
  ];
  const starts = along.starts === 1 ? '1 start' : `${along.starts} starts`;
  return (
    <Sheet title="How far along they stop">
      <p>
        Of {starts}, the share stopped for the first time, by cause; in brackets where the true share lies 19
        times in 20. A car that came back had its first stop before.
      </p>
      <Table
        caption="Share stopped along the stages"
        captionHidden
        columns={columns}
        rows={along.marks}
        rowKey={({ distance }) => String(distance)}
      />
    </Sheet>
  );
}
