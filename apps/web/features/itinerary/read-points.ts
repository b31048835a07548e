import {
  formatClock,
  formatDay,
  formatKilometres,
  type Itinerary,
  type Point,
  type ServiceWindow,
  servicesOf,
} from '@halfshaft/itinerary';

/** One row of what was understood. */
export interface ReadPoint {
  key: string;
  /** `SS1 Hochmoos`. */
  name: string;
  /** What it is and how far: `stage, 9.80 km`. */
  what: string;
  /** First car, event-local. */
  clock: string;
}

export interface ReadLeg {
  leg: number;
  /** `Leg 1, Fri 12 Jun 2026`. */
  title: string;
  points: ReadPoint[];
}

/** What was understood of an itinerary, leg by leg, for eyes that compare it with the printed one. */
export function readLegs(itinerary: Itinerary): ReadLeg[] {
  const services = new Map(servicesOf(itinerary).map((service) => [service.inIndex, service]));
  const legs: ReadLeg[] = [];
  itinerary.points.forEach((point, index) => {
    let leg = legs.at(-1);
    if (leg?.leg !== point.leg) {
      const title = `Leg ${point.leg}, ${formatDay(point.firstCarAt, itinerary.timeZone)}`;
      leg = { leg: point.leg, title, points: [] };
      legs.push(leg);
    }
    leg.points.push({
      key: `${index}${point.id}`,
      name: `${point.id} ${point.name}`,
      what: pointInWords(point, services.get(index)),
      clock: formatClock(point.firstCarAt, itinerary.timeZone),
    });
  });
  return legs;
}

/** "8 stages, 80.65 stage km, 312.68 km in all, 4 services". */
export function totalsInWords(itinerary: Itinerary): string {
  const stages = itinerary.points.filter((point) => point.kind === 'stage');
  const stageMetres = stages.reduce((sum, stage) => sum + stage.stageMetres, 0);
  const roadMetres = itinerary.points.reduce(
    (sum, point) => sum + (point.kind === 'control' ? point.roadMetres : 0),
    0,
  );
  return [
    plural(stages.length, 'stage'),
    `${formatKilometres(stageMetres)} stage km`,
    `${formatKilometres(stageMetres + roadMetres)} km in all`,
    plural(servicesOf(itinerary).length, 'service'),
  ].join(', ');
}

/** "Service B · 20 min", "Remote service A · 15 min". */
export function serviceInWords(service: Pick<ServiceWindow, 'id' | 'kind' | 'allowedSeconds'>): string {
  const kind = service.kind === 'service' ? 'Service' : 'Remote service';
  return `${kind} ${service.id} · ${Math.floor(service.allowedSeconds / 60)} min`;
}

function pointInWords(point: Point, service: ServiceWindow | undefined): string {
  if (point.kind === 'stage') {
    const again = point.repeatOf === null ? '' : `, ${point.repeatOf} again`;
    return `stage, ${formatKilometres(point.stageMetres)} km${again}`;
  }
  const road = point.roadMetres === 0 ? '' : `${formatKilometres(point.roadMetres)} km of road`;
  return [road, service ? serviceInWords(service) : ''].filter((part) => part !== '').join(', ') || 'control';
}

function plural(count: number, word: string): string {
  return `${count} ${word}${count === 1 ? '' : 's'}`;
}
