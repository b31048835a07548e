import {
  dueAt,
  formatClock,
  formatKilometres,
  type Point,
  type PointTime,
  routeMetresAt,
  type ServiceWindow,
} from '@halfshaft/itinerary';
import { Table, type TableColumn } from '@/components/table';
import type { RouteTimes } from './point-clock';

interface ListedPoint {
  name: string;
  clock: string;
  /** What was written there; empty where nothing was. */
  written: string;
  kilometres: string;
  what: string;
}

const COLUMNS: readonly TableColumn<ListedPoint>[] = [
  { key: 'name', heading: 'Point', cell: (row) => row.name, leads: true },
  { key: 'clock', heading: 'Due', cell: (row) => row.clock, figures: true },
  { key: 'kilometres', heading: 'At km', cell: (row) => row.kilometres, figures: true },
  { key: 'what', heading: 'What', cell: (row) => row.what },
];

const WITH_WRITTEN: readonly TableColumn<ListedPoint>[] = [
  ...COLUMNS.slice(0, 2),
  { key: 'written', heading: 'Written', cell: (row) => row.written, figures: true },
  ...COLUMNS.slice(2),
];

export interface RouteListProps extends RouteTimes {
  services: readonly ServiceWindow[];
}

/** The strip in words: every point with its clock and distance. */
export function RouteList({ services, ...clocks }: RouteListProps) {
  const { itinerary, times } = clocks;
  const rows = itinerary.points.map((point, index): ListedPoint => {
    const service = services.find((one) => one.inIndex === index);
    return {
      name: `${point.id} ${point.name}`,
      clock: formatClock(
        times?.[index]?.dueAt ?? dueAt(itinerary, index, clocks.startPosition),
        itinerary.timeZone,
      ),
      written: writtenInWords(times?.[index], itinerary.timeZone),
      kilometres: formatKilometres(routeMetresAt(itinerary, index)),
      what: describePoint(point, service),
    };
  });
  const columns = rows.some((row) => row.written !== '') ? WITH_WRITTEN : COLUMNS;
  return (
    <Table
      caption="Every point in driving order"
      captionHidden
      columns={columns}
      rows={rows}
      rowKey={(row, index) => `${index}${row.name}`}
    />
  );
}

function writtenInWords(time: PointTime | undefined, timeZone: string): string {
  const clocks = [time?.writtenAt, time?.finishedAt].flatMap((at) => (at ? [formatClock(at, timeZone)] : []));
  return clocks.join(' – ');
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
