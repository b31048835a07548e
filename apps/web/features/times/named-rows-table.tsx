import type { ReactNode } from 'react';
import { Table, type TableColumn } from '@/components/table';

/** The figures of one control, service or event. */
export interface NamedRow<Figures> {
  key: string;
  name: ReactNode;
  figures: Figures;
}

export interface NamedRowsTableProps<Figures> {
  caption: string;
  /** What the rows are: "Control", "Service", "Event". */
  nameHeading: string;
  columns: readonly TableColumn<NamedRow<Figures>>[];
  rows: readonly NamedRow<Figures>[];
}

/** Figures row by row, the name of each in front. */
export function NamedRowsTable<Figures>(props: NamedRowsTableProps<Figures>) {
  const { caption, nameHeading, columns, rows } = props;
  const name: TableColumn<NamedRow<Figures>> = {
    key: 'name',
    heading: nameHeading,
    leads: true,
    cell: (row) => row.name,
  };
  return (
    <Table
      caption={caption}
      captionHidden
      columns={[name, ...columns]}
      rows={rows}
      rowKey={({ key }) => key}
    />
  );
}
