import { expect } from 'vitest';
import { type Chance, chanceFrom } from '../exposure/scripted-route/fixtures';
import type { OpenBounds } from '../model';

/** A pure package has no console; the proofs run where there is one. */
declare const console: { log(line: string): void };

export const LEVEL = 0.95;

/** Bounds of one simulated history beside the truth it was made from. */
export interface Simulated {
  truth: number;
  bounds: OpenBounds;
}

export interface Coverage {
  share: number;
  /** Monte Carlo standard error of a share that is really `LEVEL`. */
  standardError: number;
  histories: number;
}

/**
 * How often bounds hold the truth, by name. A history that cannot carry a question (null) is drawn again, as it would
 * never be shown.
 */
export function simulate(
  seed: number,
  histories: number,
  draw: (chance: Chance) => Readonly<Record<string, Simulated>> | null,
): Map<string, Coverage> {
  const chance = chanceFrom(seed);
  const held = new Map<string, number>();
  for (let drawn = 0; drawn < histories; ) {
    const answers = draw(chance);
    if (answers === null) continue;
    drawn += 1;
    for (const [name, { truth, bounds }] of Object.entries(answers)) {
      const holds = bounds.low <= truth && truth <= (bounds.high ?? Infinity);
      held.set(name, (held.get(name) ?? 0) + (holds ? 1 : 0));
    }
  }
  const standardError = Math.sqrt((LEVEL * (1 - LEVEL)) / histories);
  return new Map(
    [...held].map(([name, count]) => [name, { share: count / histories, standardError, histories }]),
  );
}

export function print(what: string, coverages: ReadonlyMap<string, Coverage>): void {
  for (const [name, { share, histories }] of coverages) {
    console.log(`${what}, ${name}: ${(100 * share).toFixed(1)} % of ${histories}, asked ${100 * LEVEL} %`);
  }
}

const ERRORS_ALLOWED = 3;

/** Held as often as asked, within what chance does to a simulation. */
export function expectNominal(coverages: ReadonlyMap<string, Coverage>): void {
  expect(coverages.size).toBeGreaterThan(0);
  for (const [name, { share, standardError }] of coverages) {
    expect(Math.abs(share - LEVEL), `${name}: ${share}`).toBeLessThan(ERRORS_ALLOWED * standardError);
  }
}

/** Held at least as often as asked: bounds of a count hold more, since a count has no room between two numbers. */
export function expectAtLeast(coverages: ReadonlyMap<string, Coverage>): void {
  expect(coverages.size).toBeGreaterThan(0);
  for (const [name, { share, standardError }] of coverages) {
    expect(share, name).toBeGreaterThan(LEVEL - ERRORS_ALLOWED * standardError);
  }
}

/** A chance above 0 and below 1. */
export function openShare(chance: Chance): number {
  return Math.max(chance.next(), 2 ** -33);
}

/** How far it goes to the next failure at this rate: exponential, by inversion. */
export function drawWait(chance: Chance, rate: number): number {
  return -Math.log(openShare(chance)) / rate;
}

/** Where failures come by the power law `rate × distance^shape`, up to `end`. */
export function drawPowerLaw(
  chance: Chance,
  { rate, shape, end, most = Infinity }: { rate: number; shape: number; end: number; most?: number },
): number[] {
  const events: number[] = [];
  // In expected failures the process is one of rate 1 (time change of a Poisson process; Ross 2014, section 5.4).
  for (let expected = drawWait(chance, 1); events.length < most; expected += drawWait(chance, 1)) {
    const event = (expected / rate) ** (1 / shape);
    if (event > end) break;
    events.push(event);
  }
  return events;
}
