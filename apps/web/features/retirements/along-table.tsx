import type { RetirementFigures } from '@halfshaft/contract';
import { Table, type TableColumn } from '@/components/table';
import { percentInWords } from '@/lib/percent-in-words';
import { causeInWords } from './cause-words';
import { shareInWords } from './figures-in-words';

type Along = NonNullable<RetirementFigures['figures']['along']>;
type Mark = Along['marks'][number];

/** The curves in numbers, at round distances. */
export function AlongTable({ along: { marks } }: { along: Along }) {
  const causes = marks[0]?.causes ?? [];
  const columns: TableColumn<Mark>[] = [
    {
      key: 'distance',
      heading: 'After stage km',
      leads: true,
      cell: ({ distance }) => `${Number(distance.toFixed(1))} km`,
    },
    { key: 'going', heading: 'Not stopped', figures: true, cell: ({ going }) => percentInWords(going) },
    ...causes.map(
      ({ cause }, index): TableColumn<Mark> => ({
        key: cause,
        heading: causeInWords(cause),
        figures: true,
        cell: (mark) => {
          const share = mark.causes[index];
          return share ? shareInWords(share) : '';
        },
      }),
    ),
    { key: 'running', heading: 'Cars this far', figures: true, cell: ({ running }) => running },
  ];
  return (
    <Table
      caption="Share stopped along the stages"
      captionHidden
      columns={columns}
      rows={marks}
      rowKey={({ distance }) => String(distance)}
    />
  );
}
