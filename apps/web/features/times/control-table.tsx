import type { ControlFigures } from '@halfshaft/reliability';
import type { TableColumn } from '@/components/table';
import { knownTimesInWords } from './control-words';
import { LateShareBar } from './late-share-bar';
import { minutesInWords } from './lateness-words';
import { type NamedRow, NamedRowsTable, type NamedRowsTableProps } from './named-rows-table';

const COLUMNS: TableColumn<NamedRow<ControlFigures>>[] = [
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

/** How late cars came, row by row. */
export function ControlTable(props: Omit<NamedRowsTableProps<ControlFigures>, 'columns'>) {
  return <NamedRowsTable {...props} columns={COLUMNS} />;
}
