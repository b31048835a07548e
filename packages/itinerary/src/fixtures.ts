import * as fc from 'fast-check';
import type { ItineraryTableOptions } from './assemble-draft';
import type { ControlRole, Itinerary, Point } from './model';
import { parseItineraryTable } from './parse-itinerary-table';

/** Used by tests only. */
export const VIENNA: ItineraryTableOptions = {
  timeZone: 'Europe/Vienna',
  startDate: '2026-06-12',
  roadTimedFrom: 'stageStart',
};

/** An invented event of two legs: eight stages, two loops of the same roads, remote service and a night. */
export const TWO_LEGS = `TC/SS;Location;SS km;Road km;Total km;Target time;First car due;Gap;Section
Leg 1, 2026-06-12;;;;;;;;
TC0;Start Lindach;;;;;13:00;;1
RZ1;Refuel, distance to next refuel;(17,65);(42,10);(59,75);;;;
TC1;Hochmoos;;24,30;24,30;0:35;13:35;;
SS1;Hochmoos (I);9,80;;9,80;;13:38;;
TC2;Steinbruch;;11,20;21,00;0:28;14:06;;
SS2;Steinbruch (I);7,85;;7,85;;14:11;0:05;
TC2A;Remote service in;;6,60;14,45;0:20;14:31;;
TC2B;Remote service out;;;;0:15;14:46;;
TC3;Hochmoos;;14,00;14,00;0:25;15:11;;
SS3;Hochmoos (II);9,80;;9,80;;15:14;;
TC4;Steinbruch;;11,20;21,00;0:28;15:42;;
SS4;Steinbruch (II);7,85;;7,85;;15:47;0:05;
TC4A;Regroup in;;28,40;36,25;0:47;16:34;;
TC4B;Regroup out / Service in;;;;0:20;16:54;;2
TC4C;Service out;;;;0:45;17:39;;
RZ2;Refuel;;1,50;1,50;;;;
TC4D;Parc fermé in;;2,50;2,50;0:10;17:49;;
Total;;35,30;99,70;135,00;;;;
Leg 2, 2026-06-13;;;;;;;;
TC4E;Parc fermé out / Service in;;;;;07:30;;3
TC4F;Service out;;;;0:15;07:45;;
TC5;Auwald;;31,75;31,75;0:45;08:30;;
SS5;Auwald (I);16,65;;16,65;;08:33;;
TC6;Kalte Rinne;;19,53;36,18;0:44;09:17;;
SS6;Kalte Rinne;12,05;;12,05;;09:20;;
TC6A;Regroup in;;22,10;34,15;0:50;10:10;;
TC6B;Regroup out;;;;0:20;10:30;;4
TC6C;Technical zone in;;1,20;1,20;0:05;10:35;;
TC6D;Technical zone out / Service in;;;;0:03;10:38;;
TC6E;Service out;;;;0:30;11:08;;
TC7;Auwald;;31,75;31,75;0:45;11:53;;
SS7;Auwald (II);16,65;;16,65;;11:56;;
TC7A;Finish Lindach;;26,00;42,65;0:58;12:54;;
Leg total;;45,35;132,33;177,68;;;;
Event total;;80,65;232,03;312,68;;;;
`;

/** The itinerary of a table that is known to be good. */
export function goodItinerary(text: string, options: ItineraryTableOptions = VIENNA): Itinerary {
  const parsed = parseItineraryTable(text, options);
  if (!parsed.ok) throw new Error(parsed.problems.map((one) => `row ${one.row}: ${one.message}`).join('\n'));
  return parsed.itinerary;
}

/** Halts as pairs of controls, by the roles of the first and of the second. */
const HALT_PAIRS: readonly (readonly [ControlRole[], ControlRole[]])[] = [
  [['serviceIn'], ['serviceOut']],
  [['remoteServiceIn'], ['remoteServiceOut']],
  [['regroupIn'], ['regroupOut']],
  [['technicalIn', 'timeControl'], ['technicalOut']],
  [['tyreZoneIn'], ['tyreZoneOut', 'timeControl']],
];

const minutes = (min: number, max: number) => fc.integer({ min, max }).map((value) => value * 60);
const metres = (max: number) =>
  fc.oneof(
    fc.integer({ min: 1, max }),
    fc.integer({ min: 1, max: max / 100 }).map((n) => n * 100),
  );
const place = fc
  .string({ unit: fc.constantFrom(...'abcÄé Z9"\';,-/()|I'), minLength: 1, maxLength: 12 })
  .map((text) => text.replace(/\s+/g, ' ').trim())
  .filter((text) => text !== '' && text !== '-');
const name = fc.oneof(
  place,
  fc.constantFrom(
    'Service in',
    'Start',
    'Finish',
    'Forest start',
    'Regroup out / Service in',
    'Auwald (I)',
    'Auwald (II)',
  ),
);

const stage = fc.record({
  name,
  controlName: name,
  road: metres(90_000),
  allowed: fc.option(minutes(5, 120)),
  stepSeconds: minutes(5, 120),
  stageMetres: metres(60_000),
  gapSeconds: fc.oneof(minutes(0, 10), fc.integer({ min: 0, max: 1800 })),
  afterMetres: metres(60_000),
  afterSeconds: minutes(40, 120),
  halt: fc.option(fc.tuple(fc.constantFrom(...HALT_PAIRS), minutes(1, 60))),
  refuel: fc.boolean(),
  repeats: fc.boolean(),
});

const leg = fc.record({
  stages: fc.array(stage, { minLength: 1, maxLength: 4 }),
  restSeconds: minutes(480, 840),
});

/** Any itinerary that breaks no rule: random names, roles, sizes, zones, nights, clock changes and start blocks. */
export const anyItinerary: fc.Arbitrary<Itinerary> = fc
  .record({
    legs: fc.array(leg, { minLength: 1, maxLength: 3 }),
    timeZone: fc.constantFrom('Europe/Vienna', 'UTC', 'America/St_Johns', 'Australia/Lord_Howe'),
    // 24 October 2026 and 28 March 2026 are the eves of the European clock changes.
    day: fc
      .constantFrom('2026-06-12', '2026-10-24', '2026-03-28', '2027-04-03')
      .map((date) => Date.parse(date) / 1000),
    startMinute: fc.integer({ min: 0, max: 1439 }),
    roadTimedFrom: fc.constantFrom('stageStart' as const, 'stageFinish' as const),
    intervals: fc.array(fc.uniqueArray(fc.integer({ min: 1, max: 300 }), { minLength: 1, maxLength: 3 }), {
      minLength: 1,
      maxLength: 4,
    }),
  })
  .map(({ legs, timeZone, day, startMinute, roadTimedFrom, intervals }) => {
    const points: Point[] = [];
    let at = day + startMinute * 60;
    let [section, number, letter] = [0, 0, 0];
    const addControl = (
      id: string,
      text: string,
      roles: ControlRole[],
      legNumber: number,
      road: number,
      allowed: number | null,
    ) => {
      points.push({
        kind: 'control',
        id,
        name: text,
        roles,
        leg: legNumber,
        section,
        roadMetres: road,
        allowedSeconds: allowed,
        firstCarAt: at,
      });
    };
    legs.forEach(({ stages, restSeconds }, legIndex) => {
      section += 1;
      if (legIndex > 0) at += restSeconds;
      addControl(`TC${number}Z`, 'Start', ['start'], legIndex + 1, 0, null);
      for (const one of stages) {
        number += 1;
        letter = 0;
        // The time allowed runs through a refuel on the way.
        at += (one.allowed ?? one.stepSeconds) - (points.at(-1)?.name === 'Fuel' ? 60 : 0);
        addControl(`TC${number}`, one.controlName, ['timeControl'], legIndex + 1, one.road, one.allowed);
        at += one.gapSeconds;
        const earlier = points.find((point) => point.kind === 'stage');
        const repeatOf = one.repeats && earlier?.kind === 'stage' ? earlier.id : null;
        points.push({
          kind: 'stage',
          id: `SS${number}`,
          name: one.name,
          leg: legIndex + 1,
          section,
          stageMetres: one.stageMetres,
          gapSeconds: one.gapSeconds,
          repeatOf,
          firstCarAt: at,
        });
        at += one.afterSeconds;
        // 60 km at 40 minutes is 90 km/h: possible when timed from the finish with half the time allowed.
        const allowed = roadTimedFrom === 'stageFinish' ? 600 : one.afterSeconds;
        const [pair, haltSeconds] = one.halt ?? [null, 0];
        const id = () => `TC${number}${String.fromCharCode(65 + letter++)}`;
        addControl(
          id(),
          'Halt',
          pair ? [...pair[0]] : ['timeControl'],
          legIndex + 1,
          one.afterMetres,
          allowed,
        );
        if (pair) {
          at += haltSeconds;
          if (pair[1].includes('regroupOut')) section += 1;
          addControl(id(), 'Way out', [...pair[1]], legIndex + 1, 0, haltSeconds);
        }
        if (one.refuel) {
          at += 60;
          addControl(`RZ${number}`, 'Fuel', ['refuel'], legIndex + 1, 300, null);
        }
      }
    });
    const startBlocks = Array.from({ length: section }, (_, index) => index + 1).flatMap((one) =>
      (intervals[one % intervals.length] ?? [60]).map((intervalSeconds, order) => ({
        section: one,
        fromPosition: order * 7 + 1,
        intervalSeconds,
      })),
    );
    return { timeZone, roadTimedFrom, points, startBlocks };
  });
