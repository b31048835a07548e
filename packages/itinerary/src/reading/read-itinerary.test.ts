import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyItinerary, TWO_LEGS, VIENNA } from '../fixtures';
import { formatClock } from '../format';
import { itineraryToTable } from '../itinerary-to-table';
import type { ItineraryProblem } from '../model';
import { parseItineraryTable } from '../parse-itinerary-table';
import { zoned } from '../wall-clock';
import { readItinerary } from './read-itinerary';
import type { ReadItineraryOptions } from './read-itinerary-model';

function told(text: string, options: ReadItineraryOptions = VIENNA): ItineraryProblem[] {
  const { parsed } = readItinerary(text, options);
  return parsed.ok ? parsed.warnings : parsed.problems;
}

const places = (text: string, options?: ReadItineraryOptions) =>
  told(text, options).map(({ row, column, code }) => `${row ?? ''}:${column ?? ''} ${code}`);

function clocks(text: string, options: ReadItineraryOptions = VIENNA): string[] {
  const { parsed } = readItinerary(text, options);
  if (!parsed.ok) throw new Error(parsed.problems.map((one) => `${one.row}: ${one.message}`).join('\n'));
  return parsed.itinerary.points.map(
    (point) => `${point.id} ${formatClock(point.firstCarAt, options.timeZone)}`,
  );
}

const PRINTED = `TC/SS Location SS km Road km Total km Target time First car due
TC0 Start Au 09:00
TC1 Moorwald 12,40 12,40 0:20 09:20
SS1 Moorwald 8,10 8,10 09:23
TC2 Hollergraben 9,00 17,10 0:32 09:55
SS2 Hollergraben 11,55 11,55 09:58
TC2A Finish Au 7,45 19,00 0:32 10:30
`;

describe('readItinerary', () => {
  it('reads what the strict reader takes in the same way, whatever the itinerary', () => {
    fc.assert(
      fc.property(anyItinerary, (itinerary) => {
        const options = {
          timeZone: itinerary.timeZone,
          startDate: zoned(itinerary.points[0]?.firstCarAt ?? 0, itinerary.timeZone)
            .toPlainDate()
            .toString(),
          roadTimedFrom: itinerary.roadTimedFrom,
        };
        const text = itineraryToTable(itinerary);
        expect(readItinerary(text, options).parsed).toEqual(parseItineraryTable(text, options));
      }),
      { numRuns: 60 },
    );
  }, 60_000);

  it('reads the strict fixture as the strict reader does', () => {
    expect(readItinerary(TWO_LEGS, VIENNA).parsed).toEqual(parseItineraryTable(TWO_LEGS, VIENNA));
  });

  it('refuses nothing, too much and prose as the strict reader does', () => {
    expect(places(' \n ')).toEqual([': empty-table']);
    expect(places('x'.repeat(1_000_001))).toEqual([': text-too-long']);
    expect(places('See you at service tomorrow, 9 sharp')).toEqual(['1: header-missing']);
    expect(places(`${PRINTED}${'TC3 Au 1,00 09:00\n'.repeat(2001)}`)).toEqual([': too-many-rows']);
    expect(places(`TC/SS;Location;SS km;Road km;First car due\n${'TC1;Au;;1;09:00\n'.repeat(2001)}`)).toEqual(
      [': too-many-rows'],
    );
    expect(places('TC/SS;Location;SS km;Road km;First car due\nTC1;"Au;;1;09:00')).toEqual(['2: open-quote']);
  });

  it('throws a sentence when an option is none', () => {
    expect(() => readItinerary(PRINTED, { ...VIENNA, timeZone: 'Europe/Nowhere' })).toThrow(
      /^readItinerary: .*no time zone/,
    );
    expect(() => readItinerary(PRINTED, { ...VIENNA, startDate: 'today' })).toThrow(
      /^readItinerary: .*YYYY-MM-DD/,
    );
  });

  it('moves the times of a column for car 0 by an interval, and warns where only the heading says so', () => {
    const text = PRINTED.replace('First car due', 'Car 0 due');
    expect(clocks(text, { ...VIENNA, printedFor: 'carZero' }).slice(0, 2)).toEqual([
      'TC0 09:01',
      'TC1 09:21',
    ]);
    expect(places(text)).toEqual(['1:7 printed-for-car-zero']);
    expect(places(text, { ...VIENNA, printedFor: 'carZero' })).toEqual([]);
  });
});

describe('a table with slips', () => {
  it('reports a printed row whose code is spoilt, at its place', () => {
    expect(places(PRINTED.replace('TC2 Holler', 'TX2 Holler'))).toContain('5:1 unknown-row-kind');
    expect(places(PRINTED.replace('TC2 Holler', 'Holler'))).toContain('5:1 unknown-row-kind');
  });

  it('lets no figure move into the place of one that is spoilt or lost', () => {
    expect(places(PRINTED.replace('9,00 17,10', '9,O0 17,10'))).toEqual(['5:4 number-malformed']);
    expect(places(PRINTED.replace('9,00 17,10', '9 00 17,10'))).toEqual(['5:3 cell-misplaced']);
    expect(places(PRINTED.replace('9,00 17,10', '17,10'))).toEqual(['5:4 figure-missing']);
  });

  it('names a control that has no number and says so', () => {
    const text = PRINTED.replace('TC2A Finish', 'Finish');
    expect(clocks(text).at(-1)).toBe('TC2A 10:30');
    expect(told(text)).toMatchObject([
      {
        row: 7,
        column: 1,
        code: 'id-assumed',
        message: '“Finish Au” has no control number, so it is called TC2A here. Write its own if it has one.',
      },
    ]);
  });

  it('leaves out a line that is no row, but not in silence', () => {
    expect(places(`${PRINTED}\nRoads are closed from six.\n`)).toEqual(['9: line-left-out']);
    const { table } = readItinerary(`Rally Au\n\n${PRINTED}`, VIENNA);
    expect(table?.leftOut).toEqual([{ sourceRow: 1, text: 'Rally Au', why: 'aboveTable' }]);
  });

  it('adds the road to a passage control to the next control, and says so', () => {
    const text = PRINTED.replace('TC2 Holler', 'PC1 Bridge 2,00\nTC2 Holler');
    const { parsed } = readItinerary(text.replace('17,10', '19,10'), VIENNA);
    expect(parsed.ok && parsed.itinerary.points[3]).toMatchObject({ id: 'TC2', roadMetres: 11_000 });
    expect(places(text.replace('17,10', '19,10'))).toEqual(['5:4 untimed-road-added']);
    // The total does not count the way to the passage control, so one of the two is wrong.
    expect(places(text)).toEqual(['5:4 untimed-road-added', '6:5 total-mismatch']);
  });

  it('tells a weekday that the date has not', () => {
    const text = PRINTED.replace('TC0', 'Leg 1 Saturday 12 June 2026\nTC0');
    expect(told(text)).toMatchObject([{ row: 2, column: 1, code: 'weekday-differs' }]);
    expect(told(text)[0]?.message).toContain('2026-06-12 is a Friday');
    expect(places(text.replace('12 June', '31 June'))).toEqual(['2:1 leg-date-malformed']);
  });

  it('says that no figure is read twice under two headings of the same meaning', () => {
    const text = 'TC/SS;Location;SS km;Road km;Liaison km;First car due\nTC0;Au;;;;09:00';
    expect(places(text)).toEqual(['1:5 column-twice']);
  });

  it('says which column it needs', () => {
    expect(places('TC/SS;Location;SS km;Road km\nTC0;Au;;')).toEqual(['1: column-missing']);
  });
});

describe('what published tables hold beside their rows', () => {
  const TABLE = `Rally Au
Leg 1
Friday 12th June 2026
Section 1
TC SS Location SS Distance Liaison Distance Total Distance Target Time First Car Due
TC 0 Start 09:00
TC 1 Au-Nord 10.00 10.00 0:15 09:15
SS 1 Au-Nord / Live TV 12.50 12.50 09:18
TC 1A Regroup & Technical Zone IN 15.00 27.50 0:42 10:00
TC 1B Regroup & Technical Zone OUT - Service IN 0:20 10:20
Service A 0:30
TC 1C Service OUT 10:50
RZ 1 Refuel
Distance to next refuel (12.50) (25.00) (37.50)
TC 1D Holding area in 5.00 5.00 0:10 11:00
Sunrise 05:10 Sunset 21:05
`;

  it('is passed over, or says what it says', () => {
    expect(told(TABLE)).toEqual([]);
    expect(clocks(TABLE)).toEqual([
      'TC0 09:00',
      'TC1 09:15',
      'SS1 09:18',
      'TC1A 10:00',
      'TC1B 10:20',
      'TC1C 10:50',
      'RZ1 10:50',
      'TC1D 11:00',
    ]);
    const { parsed } = readItinerary(TABLE, VIENNA);
    const roles = parsed.ok
      ? parsed.itinerary.points.flatMap((point) => (point.kind === 'control' ? [point.roles] : []))
      : [];
    expect(roles.slice(2, 4)).toEqual([
      ['regroupIn', 'technicalIn'],
      ['regroupOut', 'technicalOut', 'serviceIn'],
    ]);
  });

  it('is a section of its own where a line says so', () => {
    const { parsed } = readItinerary(TABLE.replace('Section 1', 'Section 4'), VIENNA);
    expect(parsed.ok && parsed.itinerary.points[0]?.section).toBe(4);
  });

  it('is read where each cell stands in a line of its own', () => {
    const lines =
      'Rally Au\n\nTC 0\nStart\n09:00\nTC 1\nAu-Nord\n10.00\n10.00\n0:15\n09:15\nSS 1\nAu-Nord\n12.50\n09:18\nTC 1A\nFinish\n15.00\n27.50\n0:42\n10:00\n';
    expect(clocks(lines)).toEqual(['TC0 09:00', 'TC1 09:15', 'SS1 09:18', 'TC1A 10:00']);
    expect(places(lines)).toEqual([': headings-assumed']);
  });

  it('is cut into headings so that most columns are named', () => {
    const text =
      'Control Location Stage miles Road miles Target First car\nTC0 Hexley 9:00\nTC1 Moor 12.4 0:32 9:32\nSS1 Moor 5.22 9:35\nTC1A Hexley 8.1 0:40 10:15\n';
    const { parsed } = readItinerary(text, VIENNA);
    expect(parsed.ok && parsed.itinerary.points[1]).toMatchObject({
      roadMetres: 19_956,
      allowedSeconds: 1920,
    });
    expect(parsed.ok && parsed.itinerary.points[2]).toMatchObject({ stageMetres: 8401 });
  });
});

describe('a text that is no itinerary but long', () => {
  const HUGE = 300_000;
  it.each([
    ['one word', 'x'.repeat(HUGE)],
    ['one line of halts', 'service in '.repeat(HUGE / 12)],
    ['one line of figures', '12,40 '.repeat(HUGE / 6)],
    ['spaces', `TC1${' '.repeat(HUGE)}Au 1,00 09:00`],
    ['many lines', 'TC1 Au\n'.repeat(1900)],
    ['many loose lines', 'Service\n'.repeat(1900)],
    ['one row of many cells', `TC/SS;Location;SS km;Road km;First car due\n${';x'.repeat(HUGE / 2)}`],
    ['many columns', 'TC/SS;Location;SS km;Road km;First car due;'.repeat(HUGE / 50)],
    ['many columns in print', 'TC/SS  Location  SS km  Road km  First car due  \n'.repeat(1900)],
  ])(
    'of %s is answered with problems',
    (_, text) => {
      expect(told(text).some((problem) => problem.severity === 'error')).toBe(true);
    },
    20_000,
  );

  it('names the row of too many cells', () => {
    const text = `TC/SS;Location;SS km;Road km;First car due\nTC0;Au;;;09:00${';x'.repeat(60)}`;
    expect(places(text)).toEqual(['2: too-many-cells']);
  });
});

describe('wrapped names in text copied from a PDF', () => {
  const names = (text: string) => {
    const { parsed } = readItinerary(text, VIENNA);
    return parsed.ok ? parsed.itinerary.points.map((point) => point.name) : [];
  };

  it('go on in the line below, with a hyphen or without', () => {
    expect(
      names(
        PRINTED.replace(
          'TC2 Hollergraben 9,00 17,10 0:32 09:55',
          'TC2 Holler- 9,00 17,10 0:32 09:55\ngraben am See',
        ),
      )[3],
    ).toBe('Hollergraben am See');
  });

  it('may begin in the line above a row that has none', () => {
    expect(names(PRINTED.replace('TC2 Hollergraben', 'Hollergraben\nTC2'))[3]).toBe('Hollergraben');
  });

  it('keep a number that belongs to them', () => {
    expect(names(PRINTED.replace('TC2 Hollergraben', 'TC2 Hollergraben 2'))[3]).toBe('Hollergraben 2');
  });

  it('are no sentences and no lines of their own', () => {
    expect(places(PRINTED.replace('SS2', 'Cars may be stopped here.\nSS2'))).toEqual(['6: line-left-out']);
  });
});
