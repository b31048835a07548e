import { Table, type TableColumn } from '@/components/table';

interface HelpRow {
  column: string;
  write: string;
}

const ROWS: HelpRow[] = [
  {
    column: 'Place',
    write:
      'engine bay, under the car, front left, front right, rear left, rear right, all four corners, cockpit, body, boot or whole car',
  },
  {
    column: 'Every',
    write:
      '60 stage km, 2.5 engine hours, 1 service, 2 days, 3 events, 4 stages or 500 km; several divided by |; on request where there is no limit',
  },
  { column: 'Tolerance', write: 'How far each limit may be overrun, in the same order and unit: 5 | 0' },
  { column: 'Due date', write: '2027-03-31' },
  { column: 'Dust %, Water % …', write: 'How much faster it wears at the worst of it: 30' },
  { column: 'New part', write: 'yes where doing the job fits one: pads, a belt, fresh oil; else no' },
  { column: 'Looks', write: 'For a round, divided by |: rims | tyres | valve caps' },
  { column: 'Readings', write: 'Pad thickness: wear; unit mm; decimals 1; at FL FR; low 3.0; needed' },
  { column: 'Second signature, At a remote service', write: 'yes or no' },
  { column: 'Tools', write: 'Divided by |: torque wrench | long bar' },
];

const COLUMNS: TableColumn<HelpRow>[] = [
  { key: 'column', heading: 'Column', leads: true, cell: (row) => row.column },
  { key: 'write', heading: 'Such as', cell: (row) => row.write },
];

export function TableHelp() {
  return (
    <Table
      caption="What to write in the columns"
      captionHidden
      columns={COLUMNS}
      rows={ROWS}
      rowKey={(row) => row.column}
    />
  );
}
