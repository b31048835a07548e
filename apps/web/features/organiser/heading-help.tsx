import type { ReactNode } from 'react';
import { Disclosure } from '@/components/disclosure';
import { Table, type TableColumn } from '@/components/table';

/** A heading of a pasted list, and what may stand below it. */
export interface HeadingRow {
  heading: string;
  words: string;
}

const COLUMNS: TableColumn<HeadingRow>[] = [
  { key: 'heading', heading: 'Heading', leads: true, cell: ({ heading }) => heading },
  { key: 'words', heading: 'What to write', cell: ({ words }) => words },
];

export interface HeadingHelpProps {
  caption: string;
  rows: readonly HeadingRow[];
  /** Stands below the table. */
  children?: ReactNode;
}

/** The headings of a pasted list, behind a line to open. */
export function HeadingHelp({ caption, rows, children }: HeadingHelpProps) {
  return (
    <Disclosure summary="What to write">
      <Table
        caption={caption}
        captionHidden
        columns={COLUMNS}
        rows={rows}
        rowKey={({ heading }) => heading}
      />
      {children}
    </Disclosure>
  );
}
