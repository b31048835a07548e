import type { LifeObservation } from './fit/read-observations';
import type { Life } from './model';
import type { UnitHistory } from './recurrence/mean-cumulative';

/** NIST/SEMATECH e-Handbook 8.4.1.3: 20 units on test for 500 hours, 10 failures. */
export const NIST_LIVES: readonly Life[] = [
  ...[54, 187, 216, 240, 244, 335, 361, 373, 375, 386].map((distance) => ({ distance, failed: true })),
  ...new Array(10).fill(0).map(() => ({ distance: 500, failed: false })),
];

/** NIST/SEMATECH e-Handbook 8.2.1.5: 20 units, of which 4 were taken off unfailed and 10 ran to 200. */
export const NIST_REMOVED: readonly Life[] = [
  ...[10, 32, 56, 98, 122, 181].map((distance) => ({ distance, failed: true })),
  ...[50, 100, 125, 150].map((distance) => ({ distance, failed: false })),
  ...new Array(10).fill(0).map(() => ({ distance: 200, failed: false })),
];

/** Shock absorbers, km (O'Connor 1985; Meeker & Escobar 1998, table C.2): two modes of failure and those still good. */
export const SHOCK_ABSORBERS = {
  mode1: [6700, 12200, 14300, 17520, 22700, 26510, 27490],
  mode2: [9120, 13150, 20100, 20900],
  good: [
    6950, 7820, 8790, 9660, 9820, 11310, 11690, 11850, 11880, 12140, 12870, 13330, 13470, 14040, 17540, 17890,
    18450, 18960, 18980, 19410, 20100, 20150, 20320, 23490, 27410, 27890, 28100,
  ],
} as const;

export const SHOCK_LIVES: readonly Life[] = [
  ...SHOCK_ABSORBERS.mode1.map((distance) => ({ distance, failed: true })),
  ...SHOCK_ABSORBERS.mode2.map((distance) => ({ distance, failed: true })),
  ...SHOCK_ABSORBERS.good.map((distance) => ({ distance, failed: false })),
];

/** Only the first mode counts as a failure; the second ends the watching. */
export const SHOCK_MODE_1: readonly Life[] = SHOCK_LIVES.map(({ distance, failed }) => ({
  distance,
  failed: failed && (SHOCK_ABSORBERS.mode1 as readonly number[]).includes(distance),
}));

/** NIST/SEMATECH e-Handbook 8.4.5.2, case study 1: repairs of one system watched for 1500 hours. */
export const NIST_REPAIRS = [5, 40, 43, 175, 389, 712, 747, 795, 1299, 1478] as const;

/** MIL-HDBK-189 (1981) appendix C: failures in a test of 300 hours. */
export const HANDBOOK_FAILURES = [
  2.6, 16.5, 16.5, 17, 21.4, 29.1, 33.3, 56.5, 63.1, 70.6, 73, 77.7, 93.9, 95.5, 98.1, 101.1, 132, 142.2,
  147.7, 149, 167.2, 190.7, 193, 198.7, 251.9, 282.5, 286.1,
] as const;

/** Valve seats of 41 diesel engines, replacement days and end of watching (Nelson 1995, Technometrics 37:147-157). */
export const VALVE_SEATS: readonly UnitHistory[] = `
|761;|759;98|667;326 653 653|667;|665;84|667;87|663;646|653;92|653;|651;258 328 377 621|650;61 539|648;
254 276 298 640|644;76 538|642;635|641;349 404 561|649;|631;|596;120 479|614;323 449|582;139 139|589;|593;573|589;
165 408 604|606;249|594;344 497|613;265 586|595;166 206 348|389;|601;410 581|601;|611;|608;|587;367|603;
202 563 570|585;|587;|578;|578;|586;|585;|582`
  .trim()
  .split(';')
  .map((history) => {
    const [events = '', end = ''] = history.trim().split('|');
    return { events: events.split(' ').filter(Boolean).map(Number), end: Number(end) };
  });

export function observe(lives: readonly Life[]): LifeObservation[] {
  return lives.map(({ distance, failed }) => ({ kind: failed ? 'failedAt' : 'goodAt', distance }));
}

/** Relative difference, for sentences like "to 1e-6". */
export function relativeError(value: number, published: number): number {
  return Math.abs(value - published) / Math.abs(published);
}

/** The answer itself, where the test has made sure that the data carry it. */
export function answered<Answer extends { ok: boolean }>(result: Answer): Extract<Answer, { ok: true }> {
  if (!result.ok) throw new Error(`Expected an answer, got ${JSON.stringify(result)}.`);
  return result as Extract<Answer, { ok: true }>;
}

/** The same, where the test expects a refusal. */
export function refused<Answer extends { ok: boolean }>(result: Answer): Extract<Answer, { ok: false }> {
  if (result.ok) throw new Error(`Expected a refusal, got ${JSON.stringify(result)}.`);
  return result as Extract<Answer, { ok: false }>;
}

/** Arguments that throw when written to: "inputs are not mutated" is then checked by every test that uses them. */
export function frozen<Value>(value: Value): Value {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const inner of Object.values(value)) frozen(inner);
  }
  return value;
}
