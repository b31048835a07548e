import type { Conditions } from '@halfshaft/itinerary';
import { describe, expect, it } from 'vitest';
import { threeLoops } from '../fixtures';
import type { Drive, JobCard, Surface } from '../job-card';
import { neededAtService } from '../needed-at-service';
import { neededPersonSeconds } from '../needed-person-seconds';
import { usableMinutes } from '../usable-minutes';
import { fullStarterCards } from './full-starter-cards';
import { outsideServiceIds } from './outside-service-ids';
import { starterEssentialIds } from './starter-essential-ids';

const DRIVES: Drive[] = ['front', 'rear', 'four'];
const SURFACES: Surface[] = ['gravel', 'tarmac', 'snow'];
const EVERY_SET = DRIVES.flatMap((drive) => SURFACES.map((surface): [Drive, Surface] => [drive, surface]));

/** An ordinary day on each surface. */
const ORDINARY: Record<Surface, Conditions> = {
  gravel: { dust: 400, rough: 300, jumps: 200 },
  tarmac: { water: 300 },
  snow: { water: 200, rough: 200 },
};

function neededInTheMiddle(drive: Drive, surface: Surface, serviceIndex: number) {
  const stages = ['SS1', 'SS2', 'SS3', 'SS4', 'SS5', 'SS6'];
  return neededAtService({
    ...threeLoops(),
    serviceIndex,
    position: 1,
    cards: fullStarterCards(drive, surface),
    lastDone: new Map(),
    runs: new Map(),
    plannedConditions: new Map(stages.map((id) => [id, ORDINARY[surface]])),
  });
}

/** A club-level car's work at service, one line each (common practice, no source), and where the set has it. */
type Row = [
  work: string,
  cardId: string,
  lookId: string | null,
  only?: { drive?: Drive[]; surface?: Surface[] },
];
const DRIVEN_REAR = { drive: ['rear', 'four'] as Drive[] };
const LOOSE = { surface: ['gravel', 'snow'] as Surface[] };
const ROWS: Row[] = [
  ['oil level', 'oil-level', null],
  ['coolant level and leaks', 'engine-bay', 'coolant'],
  ['pressure-test of the cooling', 'cooling-pressure-test', null],
  ['radiator and intercooler clear', 'engine-bay', 'radiator'],
  ['air filter', 'air-filter', null],
  ['auxiliary belt', 'aux-belt', null],
  ['engine and gearbox mounts', 'engine-bay', 'mounts'],
  ['hoses, clips, boost pipes', 'engine-bay', 'hoses'],
  ['throttle', 'throttle', null],
  ['spark plugs', 'spark-plugs', null],
  ['oil and filter', 'oil-and-filter', null],
  ['fuel level', 'hear-the-crew', 'fuel'],
  ['fuel line and filter weep', 'engine-bay', 'fuel'],
  ['exhaust joints, hangers', 'under-front', 'exhaust'],
  ['gearbox leak', 'under-front', 'gearbox'],
  ['gearbox level', 'gearbox-oil', null],
  ['gearbox oil change', 'gearbox-oil-change', null],
  ['differential oil level', 'differential-oil', null, DRIVEN_REAR],
  ['differential oil change', 'differential-oil-change', null, DRIVEN_REAR],
  ['front driveshafts', 'front-left-corner', 'driveshaft', { drive: ['front', 'four'] }],
  ['rear driveshafts', 'rear-right-corner', 'driveshaft', DRIVEN_REAR],
  ['propshaft marks and joints', 'under-rear', 'propshaft', DRIVEN_REAR],
  ['propshaft bolts', 'propshaft-bolts', null, DRIVEN_REAR],
  ['sump guard and bolts', 'under-front', 'guard', LOOSE],
  ['guard off, clean, inspect', 'guard-off', null, LOOSE],
  ['subframe marks', 'under-front', 'subframe'],
  ['subframe torque', 'subframe-bolts', null],
  ['fuel and brake pipes', 'under-rear', 'pipes'],
  ['clutch fluid, bite point', 'clutch', null],
  ['wheel off', 'wheels-off', null],
  ['inside of the rim', 'front-right-corner', 'rim'],
  ['wheel nuts', 'wheel-nuts', null],
  ['wheel nuts at the first halt', 'wheel-nuts-again', null],
  ['tyre tread, cuts, bead', 'rear-left-corner', 'tyre'],
  ['tyre pressure', 'tyre-pressures', null],
  ['tyre pressure before a stage', 'pressures-before-stage', null],
  ['pad thickness', 'front-left-corner', 'brake'],
  ['front pads change', 'front-pads', null],
  ['rear pads change', 'rear-pads', null],
  ['disc thickness, cracks', 'discs', null],
  ['caliper bolts, hoses', 'front-left-corner', 'caliper'],
  ['bleed brakes', 'bleed-brakes', null],
  ['ball joints, rod ends, bushes', 'front-right-corner', 'joints'],
  ['hub bearing play', 'rear-left-corner', 'bearing'],
  ['hub bearing play, wheels free', 'hub-play', null],
  ['damper leak, top mount', 'rear-right-corner', 'damper'],
  ['ride height, camber, toe', 'geometry', null],
  ['arms and links bent', 'front-left-corner', 'arms'],
  ['tie rod lock nuts', 'front-left-corner', 'tie-rod'],
  ['harness', 'harness', null],
  ['seat bolts, belt eyes', 'seat-bolts', null],
  ['pedals and steering play', 'cockpit', 'pedals'],
  ['handbrake travel', 'handbrake', null],
  ['intercom, tripmeter, tracker, camera', 'cockpit', 'intercom'],
  ['water, food, notes, time card', 'hear-the-crew', 'needs'],
  ['glass, mirrors, lamps, wipers', 'body-and-lamps', 'glass'],
  ['bonnet, boot, door pins', 'body-and-lamps', 'pins'],
  ['bumper, arch liners', 'body-and-lamps', 'bumpers'],
  ['mud flaps', 'body-and-lamps', 'flaps', LOOSE],
  ['night lamps on', 'night-lamps', null],
  ['night lamps off', 'night-lamps-off', null],
  ['spare wheel, jack, tools', 'body-and-lamps', 'load'],
  ['battery clamp and terminals', 'engine-bay', 'battery'],
  ['charge with all lamps', 'charge-with-lamps', null],
  ['lamps, brake lamps, indicators, horn', 'body-and-lamps', 'lamps'],
  ['sensors, loom, fault memory', 'loom-and-faults', null],
  ['plumbed extinguisher', 'plumbed-extinguisher', null],
  ['its pin in and out', 'cockpit', 'system-pin'],
  ['hand extinguisher, triangle, first aid', 'hand-extinguisher', null],
  ['roll cage, electrical cut-off', 'cage-and-cut-off', null],
  ['helmets, head restraint, suits', 'helmets', null],
  ['final walk-round', 'walk-round', null],
  ['life of dampers', 'dampers', null],
  ['life of the gearbox', 'gearbox-inspection', null],
  ['life of the engine', 'engine-rebuild', null],
  ['life of hubs', 'hubs', null],
  ['life of driveshafts', 'driveshafts', null],
  ['life of the timing belt', 'timing-belt', null],
];

describe('fullStarterCards', () => {
  it.each(EVERY_SET)('%s drive on %s: ten rounds and more than forty jobs', (drive, surface) => {
    const cards = fullStarterCards(drive, surface);
    const rounds = cards.filter((card) => card.kind === 'round');
    expect(rounds.length).toBeGreaterThanOrEqual(8);
    expect(rounds.length).toBeLessThanOrEqual(12);
    expect(cards.length - rounds.length).toBeGreaterThanOrEqual(40);
    expect(new Set(cards.map((card) => card.id)).size).toBe(cards.length);
  });

  it.each(EVERY_SET)('%s drive on %s has every piece of work that applies to it', (drive, surface) => {
    const cards = new Map(fullStarterCards(drive, surface).map((card) => [card.id, card]));
    for (const [work, cardId, lookId, only] of ROWS) {
      const card = cards.get(`starter:${cardId}`);
      const there =
        lookId === null ? card !== undefined : card?.looks.some((look) => look.id === lookId) === true;
      const applies = only?.drive?.includes(drive) !== false && only?.surface?.includes(surface) !== false;
      expect(there, work).toBe(applies);
    }
  });

  it('measures pads and tread at every wheel, the tread at both edges, temperatures across it', () => {
    const positionsOf = (readingId: string) =>
      fullStarterCards('four', 'gravel')
        .flatMap((card) => card.readings)
        .filter((reading) => reading.id === readingId)
        .flatMap((reading) => reading.positions);
    expect(positionsOf('tread')).toHaveLength(8);
    expect(positionsOf('tread')).toContain('RL inner');
    expect(positionsOf('temperature')).toHaveLength(12);
    expect(positionsOf('temperature')).toContain('FR middle');
  });

  it('measures the battery at rest and with the engine running', () => {
    const bay = fullStarterCards('front', 'snow').find((card) => card.id === 'starter:engine-bay');
    expect(bay?.readings.map((reading) => reading.id)).toEqual(['volts', 'running-volts']);
  });

  it('uses every kind of reading', () => {
    const kinds = fullStarterCards('rear', 'tarmac').flatMap((card) =>
      card.readings.map((each) => each.kind),
    );
    expect([...new Set(kinds)].sort()).toEqual(['hint', 'level', 'passFail', 'setValue', 'wear']);
  });

  it.each(EVERY_SET)('%s drive on %s keeps within what a card may hold', (drive, surface) => {
    for (const card of fullStarterCards(drive, surface)) expect(faultsOf(card), card.id).toEqual([]);
  });

  it('asks a second signature for the wheel nuts and for nothing else', () => {
    const signed = fullStarterCards('four', 'snow').filter((card) => card.needsSignature);
    expect(signed.map((card) => card.id)).toEqual(['starter:wheel-nuts']);
  });

  it('hands out fresh cards each time', () => {
    fullStarterCards('four', 'gravel').forEach((card) => {
      card.intervals.push({ counter: 'days', every: 99, tolerance: 0 });
      card.tools.push('hammer');
      for (const reading of card.readings) reading.positions.push('roof');
    });
    const again = fullStarterCards('four', 'gravel');
    expect(again.every((card) => card.intervals.every(({ every }) => every !== 99))).toBe(true);
    expect(again.every((card) => !card.tools.includes('hammer'))).toBe(true);
    expect(again.every((card) => card.readings.every((each) => !each.positions.includes('roof')))).toBe(true);
  });
});

/** The bounds a card is checked against when a person saves it. */
function faultsOf(card: JobCard): string[] {
  const texts = (what: string, most: number, all: string[]) =>
    all.filter((text) => text.length > most).map((text) => `${what} too long: ${text}`);
  const factors = Object.values(card.conditionFactors);
  return [
    ...texts('name', 80, [card.name]),
    ...texts('caution', 300, [card.caution]),
    ...texts('instruction', 600, [card.instruction]),
    ...texts(
      'look',
      120,
      card.looks.map((look) => look.words),
    ),
    ...texts('tool', 60, card.tools),
    ...texts(
      'unit',
      12,
      card.readings.map((reading) => reading.unit),
    ),
    ...texts(
      'position',
      12,
      card.readings.flatMap((reading) => reading.positions),
    ),
    ...(card.intervals.length > 5 ? ['limits'] : []),
    ...(card.intervals.some(({ every }) => every > 10_000_000) ? ['limit too large'] : []),
    ...(card.looks.length > 0 === (card.kind === 'round') ? [] : ['looks of a job, or a round without']),
    ...(card.readings.some((reading) => reading.positions.length > 12) ? ['positions'] : []),
    ...(card.readings.some(({ low, high }) => low !== null && high !== null && low > high) ? ['band'] : []),
    ...(factors.some((factor) => factor < 250 || factor > 5000) ? ['factor'] : []),
    ...(card.seconds < 30 || card.seconds > 14_400 ? ['time'] : []),
    ...(card.leastServiceSeconds > 36_000 ? ['shortest service'] : []),
  ];
}

describe('the time of an ordinary service in the middle of three loops', () => {
  const middle = EVERY_SET.flatMap(([drive, surface]) =>
    [1, 2].map((serviceIndex): [Drive, Surface, number] => [drive, surface, serviceIndex]),
  );
  it.each(middle)('%s drive on %s, service %i: two people do it in 20 minutes', (drive, surface, index) => {
    const { personSeconds } = usableMinutes({ allowedSeconds: 1200, people: 2 });
    expect(personSeconds).toBe(32 * 60);
    const needed = neededInTheMiddle(drive, surface, index);
    expect(needed.doNowPersonSeconds + needed.ifTimePersonSeconds).toBeLessThanOrEqual(personSeconds);
    // It would also fit if hardly anything were due.
    expect(needed.doNowIds.length).toBeGreaterThanOrEqual(14);
    expect([...starterEssentialIds].filter((id) => !needed.doNowIds.includes(id))).toEqual([]);
  });

  it.each(EVERY_SET)(
    '%s drive on %s: essentials stand first and fit at the likely pace',
    (drive, surface) => {
      const cards = fullStarterCards(drive, surface);
      const essentials = cards.slice(0, starterEssentialIds.size);
      expect(new Set(essentials.map((card) => card.id))).toEqual(starterEssentialIds);
      const { likelyPersonSeconds } = usableMinutes({ allowedSeconds: 1200, people: 2 });
      expect(neededPersonSeconds(essentials)).toBeLessThanOrEqual(likelyPersonSeconds);
    },
  );
});

describe('cards that fit a new part', () => {
  it.each(EVERY_SET)('%s drive on %s: jobs that change, renew or rebuild something', (drive, surface) => {
    const fitting = fullStarterCards(drive, surface).filter(({ fitsNewPart }) => fitsNewPart);
    expect(fitting.length).toBeGreaterThanOrEqual(9);
    for (const { id, kind, name } of fitting) {
      expect(kind, id).toBe('job');
      expect(name, id).toMatch(/change|renew|rebuild/);
    }
    const ids = fitting.map(({ id }) => id);
    expect(ids).toEqual(expect.arrayContaining(['starter:front-pads', 'starter:driveshafts']));
    expect(ids).not.toContain('starter:wheel-nuts');
  });
});

describe('outsideServiceIds', () => {
  it.each(EVERY_SET)(
    '%s drive on %s: names cards of the set, none that needs a service',
    (drive, surface) => {
      const cards = new Map(fullStarterCards(drive, surface).map((card) => [card.id, card]));
      for (const id of outsideServiceIds) {
        expect(cards.get(id)?.kind, id).toBe('job');
        expect(cards.get(id)?.people ?? 9, id).toBeLessThanOrEqual(2);
      }
    },
  );
});
