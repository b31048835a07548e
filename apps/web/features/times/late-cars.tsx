import type { ServiceLeave } from '@halfshaft/itinerary';
import { Disclosure } from '@/components/disclosure';
import { Table, type TableColumn } from '@/components/table';

const COLUMNS: TableColumn<ServiceLeave>[] = [
  { key: 'car', heading: 'Car', leads: true, cell: ({ carNumber }) => carNumber },
  { key: 'service', heading: 'Service', cell: ({ serviceId }) => serviceId },
  { key: 'late', heading: 'Late', figures: true, cell: ({ lateMinutes }) => `${lateMinutes} min` },
  {
    key: 'over',
    heading: 'Service too long by',
    figures: true,
    cell: ({ overMinutes }) => (overMinutes === null ? 'not known' : `${overMinutes} min`),
  },
];

/** Which cars left late, the latest first. */
export function LateCars({ leaves }: { leaves: readonly ServiceLeave[] }) {
  const late = leaves
    .filter(({ lateMinutes }) => lateMinutes > 0)
    .sort((one, other) => other.lateMinutes - one.lateMinutes);
  if (late.length === 0) return null;
  return (
    <Disclosure summary={late.length === 1 ? 'The car' : `Who it was, ${late.length} times`} printOpen>
      <Table
        caption="Cars that left late"
        captionHidden
        columns={COLUMNS}
        rows={late}
        rowKey={({ carNumber, serviceId }) => `${carNumber} ${serviceId}`}
      />
    </Disclosure>
  );
}
