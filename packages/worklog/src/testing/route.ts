import type { Itinerary, Point } from '@halfshaft/itinerary';

const where = { leg: 1, section: 1, firstCarAt: 0 };

function control(id: string, role: 'serviceIn' | 'serviceOut' | 'start'): Point {
  const road = { roadMetres: 1000, allowedSeconds: null };
  return { kind: 'control', id, name: id, roles: [role], ...road, ...where };
}

function stage(id: string): Point {
  const run = { stageMetres: 10_000, gapSeconds: 180, repeatOf: null };
  return { kind: 'stage', id, name: id, ...run, ...where };
}

/** Start 0, SS1 1, Service A 2-3, SS3 4, Service B 5-6. */
export const ROUTE: Itinerary = {
  timeZone: 'UTC',
  roadTimedFrom: 'stageStart',
  startBlocks: [],
  points: [
    control('TC0', 'start'),
    stage('SS1'),
    control('TC1A', 'serviceIn'),
    control('TC1B', 'serviceOut'),
    stage('SS3'),
    control('TC3A', 'serviceIn'),
    control('TC3B', 'serviceOut'),
  ],
};
