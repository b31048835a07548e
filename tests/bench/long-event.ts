import type { ControlRole, Itinerary, Point } from '@halfshaft/itinerary';

const STAGES_A_LOOP = 2;
const SECTION = 1;

/** An invented event of so many loops, each two stages and then a service of 20 minutes, one first car due after the other. */
export function longEvent(loops: number): Itinerary {
  const points: Point[] = [];
  let clock = 8 * 3600;
  const control = (roles: ControlRole[], roadMetres: number, allowedSeconds: number | null) => {
    const id = `TC${points.length}`;
    const place = { leg: 1, section: SECTION, firstCarAt: clock };
    points.push({ kind: 'control', id, name: id, roles, roadMetres, allowedSeconds, ...place });
  };
  const stage = (number: number) => {
    control(['timeControl'], 9_600, 1_500);
    clock += 180;
    const id = `SS${number}`;
    const length = { stageMetres: 7_000 + 250 * number, gapSeconds: 180, repeatOf: null };
    points.push({ kind: 'stage', id, name: id, ...length, leg: 1, section: SECTION, firstCarAt: clock });
    clock += 1_500;
  };
  control(['start'], 0, null);
  for (let loop = 0; loop < loops; loop += 1) {
    clock += 1_500;
    for (let each = 1; each <= STAGES_A_LOOP; each += 1) stage(loop * STAGES_A_LOOP + each);
    control(['serviceIn'], 14_800, 2_040);
    clock += 1_200;
    control(['serviceOut'], 0, 1_200);
  }
  clock += 1_500;
  control(['finish'], 12_000, 1_500);
  const startBlocks = [{ section: SECTION, fromPosition: 1, intervalSeconds: 60 }];
  return { timeZone: 'UTC', roadTimedFrom: 'stageStart', points, startBlocks };
}
