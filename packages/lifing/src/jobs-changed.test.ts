import { describe, expect, it } from 'vitest';
import { cardWith, deepFreeze, eventOf, type Piece, type SmallEvent, threeLoops } from './fixtures';
import { type JobsOfVersion, jobChangeInWords, jobsChanged } from './jobs-changed';
import type { LifingCard } from './model';

const every = (id: string, km: number): LifingCard =>
  cardWith({ id, intervals: [{ counter: 'stageMetres', every: km * 1000, tolerance: 0 }] });
const CARDS = deepFreeze([every('pads', 40), every('gearbox', 60), every('wheels', 22)]);

/** The three loops without SS3: 24 km to Service B, 32 to Service C, 56 to the finish. */
function shortened(): SmallEvent {
  const loop = (number: number, first: Piece[]): Piece[] => [
    { service: 20, road: number === 1 ? 0 : 10_000 },
    ...first,
    { stage: `SS${2 * number}`, metres: 8_000, road: 10_000 },
  ];
  const long = (number: number): Piece[] => [{ stage: `SS${2 * number - 1}`, metres: 16_000, road: 10_000 }];
  const loops = [...loop(1, long(1)), ...loop(2, []), ...loop(3, long(3))];
  const event = eventOf([...loops, { finish: true, road: 10_000 }]);
  // The controls after the missing stage keep the names they have in the other version.
  const before = threeLoops();
  const services = event.services.map((service, index) => {
    const { inControl = '', outControl = '' } = before.services[index] ?? {};
    return { ...service, inControl, outControl };
  });
  return { ...event, services };
}

function jobsOf(event: SmallEvent, more: Partial<JobsOfVersion> = {}): JobsOfVersion {
  const nothing = { runs: new Map(), plannedConditions: new Map(), lastDone: new Map() };
  return { ...event, ...nothing, position: 1, cards: CARDS, fromServiceIndex: 0, ...more };
}

const said = (before: JobsOfVersion, after: JobsOfVersion) =>
  jobsChanged(before, after).map((change) => jobChangeInWords(change, change.cardId));

describe('jobsChanged', () => {
  it('is empty between equal versions', () => {
    expect(said(jobsOf(threeLoops()), jobsOf(threeLoops()))).toEqual([]);
  });

  it('says what a cancelled stage puts off, and what it brings', () => {
    expect(said(jobsOf(threeLoops()), jobsOf(shortened()))).toEqual([
      'pads: due at Service C instead of Service B.',
      'gearbox: no longer due at Service C.',
    ]);
    expect(said(jobsOf(shortened()), jobsOf(threeLoops()))).toEqual([
      'pads: due at Service B instead of Service C.',
      'gearbox: now due at Service C.',
    ]);
  });

  it('leaves services that are past out', () => {
    // Past Service B only Service C is left, and there both versions say do now for the pads.
    const fromC = { fromServiceIndex: 2 };
    expect(said(jobsOf(threeLoops(), fromC), jobsOf(shortened(), fromC))).toEqual([
      'gearbox: no longer due at Service C.',
    ]);
  });

  it('takes a service with another letter for the same where its in-control is', () => {
    const event = threeLoops();
    const services = event.services.map((service) => ({ ...service, id: `${service.id}1` }));
    expect(said(jobsOf(event), jobsOf({ ...event, services }))).toEqual([]);
  });

  it('compares only cards that both have', () => {
    const before = jobsOf(threeLoops(), { cards: CARDS.slice(0, 1) });
    expect(said(before, jobsOf(shortened()))).toEqual(['pads: due at Service C instead of Service B.']);
  });
});
