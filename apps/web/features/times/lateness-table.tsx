import type { LatenessFigures } from '@halfshaft/reliability';
import type { TableColumn } from '@/components/table';
import { LateShareBar } from './late-share-bar';
import { minutesInWords, timesInWords } from './lateness-words';
import { type NamedRow, NamedRowsTable, type NamedRowsTableProps } from './named-rows-table';

const COLUMNS: TableColumn<NamedRow<LatenessFigures>>[] = [
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

/** How late cars left, row by row, each share drawn from none to all with how sure it is. */
export function LatenessTable(props: Omit<NamedRowsTableProps<LatenessFigures>, 'columns'>) {
  return <NamedRowsTable {...props} columns={COLUMNS} />;
}
