import {
  dueAt,
  formatClock,
  formatKilometres,
  type Itinerary,
  type Point,
  routeMetresAt,
  type ServiceWindow,
  type StartPosition,
} from '@halfshaft/itinerary';
import { Table, type TableColumn } from '@/components/table';

interface ListedPoint {
  name: string;
  clock: string;
  kilometres: string;
  what: string;
}

const COLUMNS: readonly TableColumn<ListedPoint>[] = [
  { key: 'name', heading: 'Point', cell: (row) => row.name, leads: true },
  { key: 'clock', heading: 'Due', cell: (row) => row.clock, figures: true },
  { key: 'kilometres', heading: 'At km', cell: (row) => row.kilometres, figures: true },
  { key: 'what', heading: 'What', cell: (row) => row.what },
];

export interface RouteListProps {
  itinerary: Itinerary;
  services: readonly ServiceWindow[];
  startPosition: StartPosition;
}

/** The strip in words: every point with its clock and distance. */
export function RouteList({ itinerary, services, startPosition }: RouteListProps) {
  const rows = itinerary.points.map((point, index): ListedPoint => {
    const service = services.find((one) => one.inIndex === index);
    return {
      name: `${point.id} ${point.name}`,
      clock: formatClock(dueAt(itinerary, index, startPosition), itinerary.timeZone),
      kilometres: formatKilometres(routeMetresAt(itinerary, index)),
      what: describePoint(point, service),
    };
  });
  return (
    <Table
      caption="Every point in driving order"
      captionHidden
      columns={COLUMNS}
      rows={rows}
      rowKey={(row, index) => `${index}${row.name}`}
    />
  );
}

function describePoint(point: Point, service: ServiceWindow | undefined): string {
  if (point.kind === 'stage') return `stage, ${formatKilometres(point.stageMetres)} km`;
  if (service) {
    const kind = service.kind === 'service' ? 'Service' : 'Remote service';
    return `${kind} ${service.id}, ${Math.floor(service.allowedSeconds / 60)} min`;
  }
  return point.roadMetres === 0
    ? 'control'
    : `control, after ${formatKilometres(point.roadMetres)} km of road`;
}
