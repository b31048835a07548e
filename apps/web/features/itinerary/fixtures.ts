/** For tests only: how the tables of these tests are meant. */
export const SETTINGS = {
  timeZone: 'Europe/Vienna',
  startsOn: '2026-06-12',
  roadTimedFrom: 'stageStart' as const,
  startIntervalSeconds: 60,
  defaultGapSeconds: 180,
  printedFor: 'positionOne' as const,
};
