import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ItineraryTableOptions } from './assemble-draft';
import { goodItinerary, TWO_LEGS, VIENNA } from './fixtures';
import { formatClock, formatDay } from './format';
import type { Itinerary } from './model';
import { parseItineraryTable } from './parse-itinerary-table';

function clocks(itinerary: Itinerary): string[] {
  return itinerary.points.map((point) => `${point.id} ${formatClock(point.firstCarAt, itinerary.timeZone)}`);
}

function night(startDate: string, rows: string[]): ReturnType<typeof parseItineraryTable> {
  const text = ['TC/SS\tLocation\tSS km\tRoad km\tTarget time\tFirst car due', ...rows].join('\n');
  return parseItineraryTable(text, { ...VIENNA, startDate });
}

function instants(parsed: ReturnType<typeof parseItineraryTable>): string[] {
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  return parsed.itinerary.points.map((point) => new Date(point.firstCarAt * 1000).toISOString());
}

describe('parseItineraryTable', () => {
  it('reads two legs without a warning', () => {
    const parsed = parseItineraryTable(TWO_LEGS, VIENNA);
    expect(parsed).toMatchObject({ ok: true, warnings: [] });
  });

  it('reads distances, sections, roles, gaps and repeats', () => {
    const { points, startBlocks } = goodItinerary(TWO_LEGS);
    const byId = new Map(points.map((point) => [point.id, point]));
    expect(byId.get('TC4B')).toMatchObject({
      roles: ['regroupOut', 'serviceIn'],
      leg: 1,
      section: 2,
      roadMetres: 0,
      allowedSeconds: 1200,
    });
    expect(byId.get('TC4E')).toMatchObject({
      roles: ['parcFermeOut', 'serviceIn'],
      leg: 2,
      section: 3,
      allowedSeconds: null,
    });
    expect(byId.get('TC6D')).toMatchObject({ roles: ['technicalOut', 'serviceIn'], section: 4 });
    expect(byId.get('TC2A')).toMatchObject({ roles: ['remoteServiceIn'], roadMetres: 6600 });
    expect(byId.get('TC0')).toMatchObject({ roles: ['start'] });
    expect(byId.get('TC7A')).toMatchObject({ roles: ['finish'] });
    expect(byId.get('SS2')).toMatchObject({ stageMetres: 7850, gapSeconds: 300, repeatOf: null });
    expect(byId.get('SS4')).toMatchObject({ repeatOf: 'SS2', name: 'Steinbruch (II)' });
    expect(byId.get('SS6')).toMatchObject({ repeatOf: null, gapSeconds: 180 });
    expect(startBlocks).toEqual(
      [1, 2, 3, 4].map((section) => ({ section, fromPosition: 1, intervalSeconds: 60 })),
    );
  });

  it('counts no road for a refuel that prints the distance to the next, and the road of one that prints its own', () => {
    const refuels = goodItinerary(TWO_LEGS).points.filter((point) => point.id.startsWith('RZ'));
    expect(
      refuels.map(
        (point) =>
          point.kind === 'control' && [point.id, point.roles, point.roadMetres, point.allowedSeconds],
      ),
    ).toEqual([
      ['RZ1', ['refuel'], 0, null],
      ['RZ2', ['refuel'], 1500, null],
    ]);
    expect(refuels.map((point) => formatClock(point.firstCarAt, VIENNA.timeZone))).toEqual([
      '13:00',
      '17:42',
    ]);
  });

  it('reads the same from tabs, semicolons and commas, with quotes, byte order mark, CRLF and decimal points', () => {
    const cells = TWO_LEGS.trimEnd()
      .split('\n')
      .map((line) => line.split(';'));
    const commas = cells
      .map((row) => row.map((cell) => (cell.includes(',') ? `"${cell}"` : cell)).join(','))
      .join('\r\n');
    const points = cells
      .map((row) => row.map((cell, at) => (at > 1 ? cell.replace(',', '.') : cell)).join('\t'))
      .join('\n');
    const expected = goodItinerary(TWO_LEGS);
    expect(goodItinerary(`\uFEFF${commas}\r\n\r\n`)).toEqual(expected);
    expect(goodItinerary(points)).toEqual(expected);
  });

  it('matches headings whatever their case, punctuation and words', () => {
    const headings =
      'tc / ss no.;LOCATION;SS dist. (km);Liaison;TOTAL (km);Time allowed (h:mm);1st car due;gap;Sec.';
    expect(goodItinerary(TWO_LEGS.replace(/^.*\n/, `${headings}\n`))).toEqual(goodItinerary(TWO_LEGS));
  });

  it('gives every section the interval it is told unless a row says otherwise', () => {
    const text =
      'TC/SS;Location;SS km;Road km;First car due;Start interval\nTC0;Start;;;09:00;"2 min, from 11: 60 s"\nTC0A;Regroup in;;9;09:20;\nTC0B;Regroup out;;;09:40;';
    expect(goodItinerary(text, { ...VIENNA, startIntervalSeconds: 90 }).startBlocks).toEqual([
      { section: 1, fromPosition: 1, intervalSeconds: 120 },
      { section: 1, fromPosition: 11, intervalSeconds: 60 },
      { section: 2, fromPosition: 1, intervalSeconds: 90 },
    ]);
  });

  it('counts from the stage start or from an estimated finish', () => {
    const rows = [
      'TC/SS;Location;SS km;Road km;Target time;First car due',
      'TC1;Au;;0;;09:00',
      'SS1;Au;20;;;',
      'TC2;Ort;;10;0:30;',
    ];
    const text = rows.join('\n');
    expect(clocks(goodItinerary(text))).toEqual(['TC1 09:00', 'SS1 09:03', 'TC2 09:33']);
    // 20 km at 80 km/h is 15 minutes.
    expect(clocks(goodItinerary(text, { ...VIENNA, roadTimedFrom: 'stageFinish' }))).toEqual([
      'TC1 09:00',
      'SS1 09:03',
      'TC2 09:48',
    ]);
  });

  it('refuses a clock that leaves no time for the stage when timed from its finish', () => {
    const text =
      'TC/SS;Location;SS km;Road km;Target time;First car due\nTC1;Au;;0;;09:00\nSS1;Au;20;;;09:03\nTC2;Ort;;10;0:30;09:35';
    const parsed = parseItineraryTable(text, { ...VIENNA, roadTimedFrom: 'stageFinish' });
    expect(parsed.ok ? [] : parsed.problems).toMatchObject([{ row: 4, column: 6, code: 'time-mismatch' }]);
  });

  it('throws a sentence when an option is none', () => {
    expect(() => parseItineraryTable(TWO_LEGS, { ...VIENNA, timeZone: 'Europe/Nowhere' })).toThrow(
      /^parseItineraryTable: .*no time zone/,
    );
    expect(() => parseItineraryTable(TWO_LEGS, { ...VIENNA, startDate: '12.06.2026' })).toThrow(
      /^parseItineraryTable: .*YYYY-MM-DD/,
    );
  });
});

describe('midnight and clock changes', () => {
  it('rolls past midnight within a leg, printed or reckoned', () => {
    const parsed = night('2026-06-12', [
      'TC1\tAu\t\t0\t\t23:50',
      'SS1\tAu\t10\t\t\t',
      'TC2\tOrt\t\t10\t0:40\t',
      'TC2A\tBerg\t\t5\t\t01:10',
    ]);
    if (!parsed.ok) throw new Error('refused');
    expect(
      parsed.itinerary.points.map(
        (point) =>
          `${formatDay(point.firstCarAt, VIENNA.timeZone)} ${formatClock(point.firstCarAt, VIENNA.timeZone)}`,
      ),
    ).toEqual([
      'Fri 12 Jun 2026 23:50',
      'Fri 12 Jun 2026 23:53',
      'Sat 13 Jun 2026 00:33',
      'Sat 13 Jun 2026 01:10',
    ]);
  });

  it('takes the next day for a leg without a date that begins earlier than the last one ended', () => {
    const parsed = night('2026-06-12', ['TC1\tAu\t\t0\t\t18:00', 'Leg 2', 'TC1A\tAu\t\t0\t\t07:00']);
    expect(instants(parsed)).toEqual(['2026-06-12T16:00:00.000Z', '2026-06-13T05:00:00.000Z']);
  });

  it('believes a night in parc fermé within a leg, and nowhere else', () => {
    const rows = (place: string) => [`TC1\t${place} in\t\t0\t\t21:00`, `TC1A\t${place} out\t\t0\t\t07:00`];
    expect(instants(night('2026-06-12', rows('Parc fermé')))).toEqual([
      '2026-06-12T19:00:00.000Z',
      '2026-06-13T05:00:00.000Z',
    ]);
    const regroup = night('2026-06-12', rows('Regroup'));
    expect(regroup.ok ? [] : regroup.problems).toMatchObject([{ row: 3, column: 6, code: 'time-backwards' }]);
  });

  it('keeps target times true when the clocks go back, and says which of two times it took', () => {
    const parsed = night('2026-10-25', [
      'TC1\tAu\t\t0\t\t01:50',
      'TC1A\tOrt\t\t9\t\t02:30',
      'TC1B\tBerg\t\t9\t0:50\t02:20',
      'TC1C\tTal\t\t9\t0:50\t',
    ]);
    expect(instants(parsed)).toEqual([
      '2026-10-24T23:50:00.000Z',
      '2026-10-25T00:30:00.000Z',
      '2026-10-25T01:20:00.000Z',
      '2026-10-25T02:10:00.000Z',
    ]);
    expect(
      parsed.ok && parsed.warnings.map(({ row, column, code, message }) => [row, column, code, message]),
    ).toEqual([
      [
        3,
        6,
        'clock-ambiguous',
        'At TC1A (row 3), 02:30 comes twice because the clocks go back; 02:30+02:00 was taken. If the other is meant, write 02:30+01:00.',
      ],
      [
        4,
        6,
        'clock-ambiguous',
        'At TC1B (row 4), 02:20 comes twice because the clocks go back; 02:20+01:00 was taken. If the other is meant, write 02:20+02:00.',
      ],
    ]);
  });

  it('takes the time it is told to when an offset is written, without a warning', () => {
    const parsed = night('2026-10-25', ['TC1\tAu\t\t0\t\t01:50', 'TC1A\tOrt\t\t9\t\t02:30+01:00']);
    expect(instants(parsed)).toEqual(['2026-10-24T23:50:00.000Z', '2026-10-25T01:30:00.000Z']);
    expect(parsed).toMatchObject({ warnings: [] });
  });

  it('moves a time that does not exist when the clocks go forward, and says so', () => {
    const parsed = night('2026-03-29', [
      'TC1\tAu\t\t0\t\t01:50',
      'TC1A\tOrt\t\t9\t\t02:30',
      'TC1B\tBerg\t\t9\t0:20\t03:50',
    ]);
    expect(instants(parsed)).toEqual([
      '2026-03-29T00:50:00.000Z',
      '2026-03-29T01:30:00.000Z',
      '2026-03-29T01:50:00.000Z',
    ]);
    expect(parsed.ok && parsed.warnings).toMatchObject([
      {
        row: 3,
        column: 6,
        code: 'clock-skipped',
        message: expect.stringContaining(
          '02:30 does not exist because the clocks go forward; 03:30 was taken',
        ),
      },
    ]);
  });
});

describe('any text', () => {
  const lines = TWO_LEGS.split('\n');
  const position = fc.integer({ min: 0, max: TWO_LEGS.length });
  const line = fc.integer({ min: 0, max: lines.length - 1 });
  const snippet = fc.oneof(
    fc.string({ maxLength: 4 }),
    fc.constantFrom('"', ';', '\n', ',', ':', '-', '0', '9', 'SS', 'TC', 'Leg', 'in', '24:00'),
  );
  const mutation = fc.oneof(
    fc.tuple(position, fc.nat(6), snippet).map(
      ([at, length, text]) =>
        (table: string) =>
          table.slice(0, at) + text + table.slice(at + length),
    ),
    fc.tuple(line, line).map(([from, to]) => (table: string) => {
      const rows = table.split('\n');
      rows.splice(to, 0, ...rows.splice(from, 1));
      return rows.join('\n');
    }),
    line.map(
      (at) => (table: string) =>
        table
          .split('\n')
          .filter((_, index) => index !== at)
          .join('\n'),
    ),
    line.map(
      (at) => (table: string) =>
        table
          .split('\n')
          .flatMap((row, index) => (index === at ? [row, row] : [row]))
          .join('\n'),
    ),
  );

  function expectAnswer(text: string, options: ItineraryTableOptions): void {
    const parsed = parseItineraryTable(text, options);
    if (parsed.ok) {
      expect(parsed.itinerary.points.length).toBeGreaterThan(0);
      expect(parsed.warnings.every((one) => one.severity === 'warning')).toBe(true);
      return;
    }
    expect(parsed.problems.some((one) => one.severity === 'error')).toBe(true);
    expect(parsed.problems.every((one) => /^\P{Ll}.*\.$/su.test(one.message) && one.code !== '')).toBe(true);
  }

  it('mutated from a good table is an itinerary or a list of problems, never a crash', () => {
    fc.assert(
      fc.property(
        fc.array(mutation, { minLength: 1, maxLength: 4 }),
        fc.boolean(),
        (mutations, fromStart) => {
          const text = mutations.reduce((table, change) => change(table), TWO_LEGS);
          expectAnswer(text, { ...VIENNA, roadTimedFrom: fromStart ? 'stageStart' : 'stageFinish' });
        },
      ),
      { numRuns: 250 },
    );
  }, 60_000);

  it('at random is never a crash', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => expectAnswer(text, VIENNA)),
      { numRuns: 200 },
    );
  });
});
