import type { ControlFigures } from '@halfshaft/reliability';
import type { ReactNode } from 'react';
import { Table, type TableColumn } from '@/components/table';
import { knownTimesInWords } from './control-words';
import { LateShareBar } from './late-share-bar';
import { minutesInWords } from './lateness-words';

export interface ControlRow {
  key: string;
  name: ReactNode;
  figures: ControlFigures;
}

const COLUMNS: TableColumn<ControlRow>[] = [
  {
    key: 'share',
    heading: 'Came late',
    cell: ({ figures: { late, arrivals } }) => <LateShareBar late={late} of={arrivals} />,
  },
  { key: 'by', heading: 'By', cell: ({ figures }) => minutesInWords(figures.late) },
  { key: 'lost', heading: 'Lost on the way', cell: ({ figures }) => knownTimesInWords(figures.lost) },
  { key: 'total', heading: 'Lost in all', cell: ({ figures }) => knownTimesInWords(figures.total) },
  {
    key: 'beyond',
    heading: 'Over the maximum',
    figures: true,
    cell: ({ figures }) => figures.beyond.count,
  },
];

export interface ControlTableProps {
  caption: string;
  /** What the rows are: "Control", "Event". */
  nameHeading: string;
  rows: readonly ControlRow[];
}

/** How late cars came, row by row. */
export function ControlTable({ caption, nameHeading, rows }: ControlTableProps) {
  const name: TableColumn<ControlRow> = {
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
