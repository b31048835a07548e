import type { Itinerary, Point } from '@halfshaft/itinerary';
import type { CarFact, FactPlace, RecordedFact } from '../car-fact';
import { MIA } from './people';

const where = { leg: 1, section: 1, firstCarAt: 0 };

function control(id: string, role: 'serviceIn' | 'serviceOut' | 'start' | 'finish'): Point {
  const road = { roadMetres: 1000, allowedSeconds: null };
  return { kind: 'control', id, name: id, roles: [role], ...road, ...where };
}

function stage(id: string, stageMetres: number): Point {
  return { kind: 'stage', id, name: id, stageMetres, gapSeconds: 180, repeatOf: null, ...where };
}

/** Start 0, SS1 1 (10 km), Service A 2–3, SS2 4 (20 km), SS3 5 (5 km), Service B 6–7, finish 8. */
export const THREE_STAGES: Itinerary = {
  timeZone: 'UTC',
  roadTimedFrom: 'stageStart',
  startBlocks: [],
  points: [
    control('TC0', 'start'),
    stage('SS1', 10_000),
    control('TC1A', 'serviceIn'),
    control('TC1B', 'serviceOut'),
    stage('SS2', 20_000),
    stage('SS3', 5_000),
    control('TC3A', 'serviceIn'),
    control('TC3B', 'serviceOut'),
    control('TC4', 'finish'),
  ],
};

export const AT_START: FactPlace = { kind: 'road', afterStageId: null };
export const atService = (serviceId: string): FactPlace => ({ kind: 'service', serviceId });
export const afterStage = (afterStageId: string): FactPlace => ({ kind: 'road', afterStageId });

/** Facts of one car, recorded one after the other. */
export function recorded(...facts: [FactPlace, CarFact][]): RecordedFact[] {
  return facts.map(([at, fact], index) => ({
    factId: `f${index}`,
    entryId: 'car7',
    at,
    fact,
    recordedBy: MIA,
    withdrawn: false,
    changedSeq: index + 1,
    changedBy: MIA,
  }));
}
