import type { LatenessFigures } from '@halfshaft/reliability';
import type { ReactNode } from 'react';
import { RangeBar } from '@/components/range-bar';
import { Table, type TableColumn } from '@/components/table';
import { lateShareInWords, minutesInWords } from './lateness-words';

export interface LatenessRow {
  key: string;
  name: ReactNode;
  figures: LatenessFigures;
}

const COLUMNS: TableColumn<LatenessRow>[] = [
  {
    key: 'share',
    heading: 'Left late',
    cell: ({ figures }) =>
      figures.late.share === null ? (
        lateShareInWords(figures)
      ) : (
        <RangeBar
          value={figures.late.share.share}
          low={figures.late.share.bounds.low}
          high={figures.late.share.bounds.high}
          top={1}
        >
          {lateShareInWords(figures)}
        </RangeBar>
      ),
  },
  { key: 'by', heading: 'By', cell: ({ figures }) => minutesInWords(figures.late) },
  {
    key: 'over',
    heading: 'Service too long',
    cell: ({ figures: { overran } }) =>
      overran.count === 0
        ? '–'
        : `${overran.count === 1 ? 'once' : `${overran.count} times`}, by ${minutesInWords(overran)}`,
  },
  {
    key: 'beyond',
    heading: 'Over the maximum',
    figures: true,
    cell: ({ figures }) => figures.beyond.count,
  },
];

export interface LatenessTableProps {
  caption: string;
  /** What the rows are: "Service", "Event". */
  nameHeading: string;
  rows: readonly LatenessRow[];
}

/** How late cars left, row by row, each share drawn from none to all with how sure it is. */
export function LatenessTable({ caption, nameHeading, rows }: LatenessTableProps) {
  const name: TableColumn<LatenessRow> = {
    key: 'name',
    heading: nameHeading,
    leads: true,
    cell: (row) => row.name,
  };
  return (
    <Table
      caption={caption}
      captionHidden
      columns={[name, ...COLUMNS]}
      rows={rows}
      rowKey={({ key }) => key}
    />
  );
}
