import type { ControlPoint, ControlRole, Itinerary, StagePoint } from '@halfshaft/itinerary';

const SECONDS_IN_MINUTE = 60;
const FIRST_CAR = Date.UTC(2026, 5, 13, 6, 0) / 1000;

function control(
  id: string,
  roles: ControlRole[],
  roadMetres: number,
  minutesFromStart: number,
): ControlPoint {
  const firstCarAt = FIRST_CAR + minutesFromStart * SECONDS_IN_MINUTE;
  return {
    kind: 'control',
    id,
    name: id,
    roles,
    roadMetres,
    allowedSeconds: null,
    leg: 1,
    section: 1,
    firstCarAt,
  };
}

function stage(id: string, stageMetres: number, minutesFromStart: number): StagePoint {
  const firstCarAt = FIRST_CAR + minutesFromStart * SECONDS_IN_MINUTE;
  return {
    kind: 'stage',
    id,
    name: id,
    stageMetres,
    gapSeconds: 180,
    repeatOf: null,
    leg: 1,
    section: 1,
    firstCarAt,
  };
}

/** An invented day, for the line drawn on the first page. */
export const EXAMPLE_EVENT: Itinerary = {
  timeZone: 'Europe/Vienna',
  roadTimedFrom: 'stageStart',
  startBlocks: [],
  points: [
    control('TC0', ['start'], 0, 0),
    stage('SS1', 12_400, 33),
    control('TC2', ['timeControl'], 9_300, 65),
    stage('SS2', 8_700, 68),
    control('TC2A', ['serviceIn'], 22_000, 113),
    control('TC2B', ['serviceOut'], 0, 133),
    control('TC3', ['timeControl'], 15_000, 163),
    stage('SS3', 21_300, 166),
    control('TC4', ['timeControl'], 6_000, 206),
    stage('SS4', 12_400, 209),
    control('TC4A', ['remoteServiceIn'], 12_000, 249),
    control('TC4B', ['remoteServiceOut'], 0, 259),
    control('TC5', ['timeControl'], 9_000, 284),
    stage('SS5', 8_700, 287),
    control('TC5A', ['serviceIn'], 25_000, 332),
    control('TC5B', ['serviceOut'], 0, 352),
    control('TC6', ['timeControl'], 18_000, 382),
    stage('SS6', 17_800, 385),
    control('TC6A', ['finish'], 24_000, 445),
  ],
};
