import { describe, expect, it } from 'vitest';
import { cardWith, deepFreeze } from '../fixtures';
import { twoDays } from '../triggers/fixtures';
import { judgePlace, type PlaceQuestion, type PlaceRead } from './judge-place';
import type { WearReading } from './model';
import { verdictOfPlaces } from './verdict-of-places';

interface PlacesQuestion extends PlaceQuestion {
  places: readonly PlaceRead[];
}

const GROUP = 'front|gravel|medium';
const change = cardWith({ id: 'front-pads', leastServiceSeconds: 1200, remoteAllowed: false });

/** Read at Service B after 24 stage km; 24 more to Service C. New pads went on in Service A. */
function question(left: number[], right: number[], own: Partial<PlacesQuestion> = {}): PlacesQuestion {
  const series = (position: string, values: number[]): WearReading[] =>
    values.map((value, index) => ({
      group: GROUP,
      position,
      part: 'set 1',
      wornMetres: index * 24_000,
      value,
    }));
  return deepFreeze({
    ...twoDays(),
    runs: new Map(),
    plannedConditions: new Map(),
    serviceIndex: 1,
    position: 1,
    card: { ...change, leastServiceSeconds: 600, remoteAllowed: true },
    lastDone: { pointIndex: 0, carried: null },
    spec: { id: 'pads', name: 'Pads', unit: 'mm', decimals: 1, low: 30, high: null },
    readings: [...series('FL', left), ...series('FR', right)],
    places: ['FL', 'FR'].map((position) => ({ position, group: GROUP, part: 'set 1' })),
    cardRate: null,
    marginPerMille: 1000,
    ...own,
  });
}

function verdictOf(question: PlacesQuestion) {
  return verdictOfPlaces(
    question.places.map((place) => judgePlace(place, question)),
    question,
  );
}

describe('judgePlace and verdictOfPlaces', () => {
  it('lasts: 6.2 less 1.9 is more than 3.0', () => {
    const verdict = verdictOf(question([81, 62], [81, 70]));
    expect(verdict).toMatchObject({
      cardId: 'front-pads',
      verdict: 'leave',
      overdue: false,
      doableHere: true,
    });
    expect(verdict?.reasons.map((each) => each.words)).toEqual([
      'Pads FL: 6.2 mm, 4.3 expected at Service C, limit 3.0: lasts',
    ]);
  });

  it('will not reach: two loops to go from Service A when the remote service is too short', () => {
    // At Service A with 6.2 mm; B is a remote service, so Service C is 48 stage km away: 3.8 of 3.2 to spare.
    const verdict = verdictOf(
      question([], [], {
        card: change,
        serviceIndex: 0,
        readings: [
          { group: GROUP, position: 'FL', part: 'set 1', wornMetres: 0, value: 62 },
          { group: GROUP, position: 'FL', part: 'set 0', wornMetres: 0, value: 100 },
          { group: GROUP, position: 'FL', part: 'set 0', wornMetres: 24_000, value: 81 },
        ],
      }),
    );
    expect(verdict).toMatchObject({ verdict: 'doNow', overdue: false });
    expect(verdict?.reasons[0]).toMatchObject({ code: 'wearsOut', lossAhead: 38, nextChance: 'C' });
    expect(verdict?.reasons[0]?.words).toBe(
      "Pads FL: 6.2 mm, 2.4 expected at Service C, limit 3.0: won't last",
    );
  });

  it('the worst place stands first, places in order are not listed beside one that is not', () => {
    const verdict = verdictOf(question([90, 60], [90, 50]));
    // 3.0 and 4.0 lost a loop; the worst of the axle counts for both sides.
    expect(verdict?.reasons.map((each) => [each.position, each.code])).toEqual([
      ['FR', 'wearsOut'],
      ['FL', 'wearsOut'],
    ]);
    const one = verdictOf(question([90, 80], [60, 45]));
    expect(one?.reasons.map((each) => each.position)).toEqual(['FR']);
  });

  it('coming to the limit exactly is in time', () => {
    expect(verdictOf(question([70, 50], [90, 80]))?.verdict).toBe('leave');
    expect(verdictOf(question([70, 49], [90, 80]))?.verdict).toBe('doNow');
  });

  it('past its limit already: due and late', () => {
    const verdict = verdictOf(question([60, 29], [80, 70]));
    expect(verdict).toMatchObject({ verdict: 'doNow', overdue: true });
    expect(verdict?.reasons[0]?.words).toBe('Pads FL: 2.9 mm, past its limit 3.0');
  });

  it('a remote service too short to change them: not here, and why it matters', () => {
    const verdict = verdictOf(question([81, 40], [98, 90], { card: change }));
    expect(verdict).toMatchObject({ verdict: 'leave', doableHere: false });
    expect(verdict?.reasons.map((each) => each.code)).toEqual(['notHere', 'wearsOut']);
    expect(verdict?.reasons[0]?.words).toBe('cannot be done at this service, next chance Service C');
  });

  it('conditions ahead wear faster when the card says so', () => {
    const dusty = new Map(['SS3', 'SS4'].map((id) => [id, { dust: 1000 }]));
    const card = {
      ...change,
      leastServiceSeconds: 600,
      remoteAllowed: true,
      conditionFactors: { dust: 2000 },
    };
    expect(verdictOf(question([81, 62], [81, 70], { card }))?.verdict).toBe('leave');
    const verdict = verdictOf(question([81, 62], [81, 70], { card, plannedConditions: dusty }));
    expect(verdict?.reasons[0]).toMatchObject({ code: 'wearsOut', lossAhead: 38 });
  });

  it('a place not read here is reckoned from its last reading', () => {
    // Last read new: 48 stage km from there to Service C.
    const verdict = verdictOf(question([81], [81, 62]));
    expect(verdict?.reasons[0]).toMatchObject({ position: 'FL', code: 'holds', lossAhead: 38 });
  });

  it('to the finish when no service comes any more', () => {
    const verdict = verdictOf(question([81, 62], [81, 70], { serviceIndex: 4, cardRate: 10 }));
    expect(verdict?.reasons[0]?.words).toContain("expected at the finish, limit 3.0: won't last");
  });

  it('one reading and no rate: it says so and asks for nothing', () => {
    const verdict = verdictOf(question([62], []));
    expect(verdict?.verdict).toBe('leave');
    expect(verdict?.reasons[0]?.words).toBe('Pads FL: 6.2 mm, limit 3.0: not known yet how fast it wears');
  });

  it('says where it was read: here, or at an earlier service; and never expects less than nothing', () => {
    const readAt = (service: string, value: number): WearReading[] => [
      { group: GROUP, position: 'FL', part: 'set 1', wornMetres: 0, value: 100 },
      { group: GROUP, position: 'FL', part: 'set 1', wornMetres: 24_000, value, readAt: service },
    ];
    const said = (readings: WearReading[]) => verdictOf(question([], [], { readings }))?.reasons[0]?.words;
    expect(said(readAt('B', 60))).toBe(
      "Pads FL: 6.0 mm now, 2.0 expected at Service C, limit 3.0: won't last",
    );
    expect(said(readAt('A', 40))).toBe(
      "Pads FL: 4.0 mm at Service A, 0.0 expected at Service C, limit 3.0: won't last",
    );
  });

  it('a place may have a part of its own, younger than the rest', () => {
    const readings: WearReading[] = [
      { group: GROUP, position: 'FL', part: 'set 1', wornMetres: 0, value: 100 },
      { group: GROUP, position: 'FL', part: 'set 1', wornMetres: 24_000, value: 81 },
      { group: GROUP, position: 'FL', part: 'set 2', wornMetres: 0, value: 100 },
    ];
    // Fitted here, at Service B: one loop of 24 km lies ahead of it, not two.
    const since = { pointIndex: twoDays().services[1]?.inIndex ?? 0, carried: null };
    const places = [{ position: 'FL', group: GROUP, part: 'set 2', since }];
    expect(verdictOf(question([], [], { readings, places }))?.reasons[0]).toMatchObject({
      code: 'holds',
      lossAhead: 19,
    });
  });

  it('an upper limit grows', () => {
    const spec = { id: 'play', name: 'Play', unit: 'mm', decimals: 1, low: null, high: 10 };
    const verdict = verdictOf(question([1, 6], [1, 2], { spec }));
    expect(verdict?.reasons[0]?.words).toBe(
      "Play FL: 0.6 mm, 1.1 expected at Service C, limit 1.0: won't last",
    );
  });

  it('no limit, or nothing read: nothing to say', () => {
    const spec = { id: 'disc', name: 'Disc', unit: 'mm', decimals: 1, low: null, high: null };
    expect(verdictOf(question([81, 62], [81, 70], { spec }))).toBeNull();
    expect(verdictOf(question([], []))).toBeNull();
  });

  it('refuses a service that does not exist', () => {
    expect(() => verdictOf(question([81], [81], { serviceIndex: 9 }))).toThrow('no service at index 9');
  });
});
