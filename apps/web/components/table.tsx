import type { ReactNode } from 'react';
import { classNames } from '@/lib/class-names';
import styles from './table.module.css';

export interface TableColumn<Row> {
  key: string;
  heading: string;
  /** Null where there is nothing to say: a dash among columns, left out of the stacked list. */
  cell: (row: Row) => ReactNode;
  /** Numbers, clocks and distances: set to the right in figures of one width. */
  figures?: boolean;
  /** Names the row: stands bold, and heads its entry in the stacked list. */
  leads?: boolean;
}

export interface TableProps<Row> {
  /** What the table shows; read out, and visible unless `captionHidden`. */
  caption: string;
  captionHidden?: boolean;
  columns: readonly TableColumn<Row>[];
  rows: readonly Row[];
  rowKey: (row: Row, index: number) => string;
}

/** A ruled table; where its place is narrow each row becomes an entry of a list, with the headings as labels. */
export function Table<Row>({ caption, captionHidden = false, columns, rows, rowKey }: TableProps<Row>) {
  return (
    <div className={styles.place}>
      <table className={styles.table}>
        <caption className={classNames(styles.caption, captionHidden && styles.unseen)}>{caption}</caption>
        <thead className={styles.head}>
          <tr>
            {columns.map((column) => (
              <th
                key={column.key}
                scope="col"
                className={classNames(styles.heading, column.figures && styles.figures)}
              >
                {column.heading}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <tr key={rowKey(row, index)} className={styles.row}>
              {columns.map((column) => (
                <TableCell key={column.key} column={column} row={row} />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function TableCell<Row>({ column, row }: { column: TableColumn<Row>; row: Row }) {
  const className = classNames(styles.cell, column.figures && styles.figures, column.leads && styles.leads);
  if (column.leads) {
    return (
      <th scope="row" className={className}>
        {column.cell(row)}
      </th>
    );
  }
  const content = column.cell(row);
  return (
    <td className={classNames(className, content === null && styles.blank)}>
      <span className={styles.label} aria-hidden="true">
        {column.heading}
      </span>
      <span className={styles.value}>{content ?? '–'}</span>
    </td>
  );
}
