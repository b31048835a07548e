import type { LatenessFigures } from '@halfshaft/reliability';
import type { ReactNode } from 'react';
import { Table, type TableColumn } from '@/components/table';
import { LateShareBar } from './late-share-bar';
import { minutesInWords, timesInWords } from './lateness-words';

export interface LatenessRow {
  key: string;
  name: ReactNode;
  figures: LatenessFigures;
}

const COLUMNS: TableColumn<LatenessRow>[] = [
  {
    key: 'share',
    heading: 'Left late',
    cell: ({ figures: { late, leaves } }) => <LateShareBar late={late} of={leaves} />,
  },
  { key: 'by', heading: 'By', cell: ({ figures }) => minutesInWords(figures.late) },
  {
    key: 'over',
    heading: 'Service too long',
    cell: ({ figures }) => timesInWords(figures.overran),
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
