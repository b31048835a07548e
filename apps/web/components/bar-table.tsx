import type { ReactNode } from 'react';
import styles from './bar-table.module.css';
import { Table, type TableColumn } from './table';

export interface BarRow {
  key: string;
  name: ReactNode;
  amount: number;
  /** The amount as it is said: "3 times". */
  words: string;
}

export interface BarTableProps {
  caption: string;
  captionHidden?: boolean;
  /** What the rows are: "Part", "Place". */
  nameHeading: string;
  amountHeading: string;
  /** The largest first. */
  rows: readonly BarRow[];
}

const LONG = 100;
const THICK = 10;

/** Amounts beside each other as bars, each with its number in words: the table is the chart, so nothing is hidden in it. */
export function BarTable({
  caption,
  captionHidden = false,
  nameHeading,
  amountHeading,
  rows,
}: BarTableProps) {
  const most = Math.max(1, ...rows.map(({ amount }) => amount));
  const columns: TableColumn<BarRow>[] = [
    { key: 'name', heading: nameHeading, leads: true, cell: ({ name }) => name },
    {
      key: 'amount',
      heading: amountHeading,
      cell: ({ words, amount }) => (
        <span className={styles.amount}>
          <span className={styles.words}>{words}</span>
          <Bar share={amount / most} />
        </span>
      ),
    },
  ];
  return (
    <Table
      caption={caption}
      captionHidden={captionHidden}
      columns={columns}
      rows={rows}
      rowKey={({ key }) => key}
    />
  );
}

function Bar({ share }: { share: number }) {
  return (
    <svg
      className={styles.bar}
      viewBox={`0 0 ${LONG} ${THICK}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      <rect
        className={styles.rest}
        x="0"
        y="0"
        width={LONG}
        height={THICK}
        vectorEffect="non-scaling-stroke"
      />
      <rect className={styles.fill} x="0" y="0" width={LONG * share} height={THICK} />
    </svg>
  );
}
