import { describe, expect, it } from 'vitest';
import { controlCode } from './control-code';
import { findHeadings } from './find-headings';
import { HaltNamer } from './halt-namer';
import { headingMeaning } from './heading-meaning';
import { mendSplitDecimals } from './mend-split-decimals';
import { figureKind, printedLine } from './printed-words';
import { writtenDate } from './written-date';
import { writtenDistance } from './written-distance';
import { writtenClock, writtenDuration } from './written-time';

describe('controlCode', () => {
  it.each([
    ['TC5B', 'TC5B', ''],
    ['TC 5B Service', 'TC5B', 'Service'],
    ['ss 5', 'SS5', ''],
    ['Stage 5 Quarry', 'SS5', 'Quarry'],
    ['SSS1', 'SSS1', ''],
    ['ZR1/RZ1 Lindach', 'RZ1', 'Lindach'],
    ['RZ 2', 'RZ2', ''],
    ['ZK 4a', 'TC4A', ''],
    ['CH-3', 'TC3', ''],
    ['CO 2B', 'TC2B', ''],
    ['WP 7', 'SS7', ''],
    ['PS12', 'SS12', ''],
    ['MTC 1', 'MTC1', ''],
    ['PC3', 'PC3', ''],
    ['TC1 A Coruña', 'TC1', 'A Coruña'],
  ])('reads %s as %s', (text, id, rest) => {
    expect(controlCode(text)).toEqual({ id, rest });
  });

  it.each(['', 'Service', 'TC', 'TX5', 'SP 2026', 'TC5Bis', 'Total 5', '5'])(
    'reads no code in “%s”',
    (text) => {
      expect(controlCode(text)).toBeNull();
    },
  );
});

describe('headingMeaning', () => {
  it.each([
    ['Liaison (miles)', 'roadKm', 'miles'],
    ['SS dist. (km)', 'stageKm', null],
    ['WP km', 'stageKm', null],
    ['Verbindungsetappe', 'roadKm', null],
    ['Temps imparti', 'target', null],
    ['Target (minutes)', 'target', 'minutes'],
    ['1ère voiture', 'due', null],
    ['Prima vettura', 'due', null],
    ['Località', 'location', null],
    ['ZK/WP', 'id', null],
    ['TC / SS / RZ', 'id', null],
    ['Weather', null, null],
    ['', null, null],
  ])('reads %s', (heading, key, unit) => {
    expect(headingMeaning(heading)).toMatchObject({ key, unit });
  });

  it('knows a column of times for car 0', () => {
    expect(headingMeaning('Scheduled car 0')).toMatchObject({ key: 'due', isForCarZero: true });
    expect(headingMeaning('First car due')).toMatchObject({ key: 'due', isForCarZero: false });
  });
});

describe('findHeadings', () => {
  it('joins a merged upper row to the lower one', () => {
    const found = findHeadings([
      ['Au rally', '', '', '', ''],
      ['', '', 'Distance (miles)', '', 'First car'],
      ['TC/SS', 'Location', 'SS', 'Road', 'due'],
      ['TC0', 'Au', '', '', '09:00'],
    ]);
    expect(found).toMatchObject({ row: 1, span: 2, known: 5 });
    expect(found?.headings.map((heading) => [heading.meaning, heading.unit])).toEqual([
      ['id', null],
      ['location', null],
      ['stageKm', 'miles'],
      ['roadKm', 'miles'],
      ['due', null],
    ]);
  });

  it('takes a row of units below with the headings, and no title above', () => {
    const rows = [
      ['Plan', '', ''],
      ['TC/SS', 'Location', 'Road'],
      ['', '', '(km)'],
      ['TC0', 'Au', '1'],
    ];
    expect(findHeadings(rows)).toMatchObject({ row: 1, span: 2, known: 3 });
  });
});

describe('writtenDistance', () => {
  it.each([
    ['16,65 km', null, '16,65'],
    ['16.65KM', null, '16.65'],
    ['(17,65)', null, '(17,65)'],
    // A mile is 1,609.344 m.
    ['10 mi', null, '16.093'],
    ['10', 'miles', '16.093'],
    ['10 km', 'miles', '10'],
    ['(1,5 miles)', null, '(2.414)'],
    ['850 m', null, '0.850'],
    ['8,1O', null, '8,1O'],
    ['1.301,25', null, '1.301,25'],
    ['5 furlongs', null, '5 furlongs'],
  ] as const)('reads %s under %s', (cell, unit, written) => {
    expect(writtenDistance(cell, unit)).toBe(written);
  });
});

describe('writtenDuration', () => {
  it.each([
    ['0:30 min', null, '0:30'],
    ['44 min', null, '0:44'],
    ['90 min', null, '1:30'],
    ['44', 'minutes', '0:44'],
    ['44', null, '44'],
    ['1h30', null, '1:30'],
    ['1 h 5 min', null, '1:05'],
    ['0:44 h', null, '0:44'],
    ['0:03:30', null, '0:03:30'],
    ['soon', null, 'soon'],
  ] as const)('reads %s under %s', (cell, unit, written) => {
    expect(writtenDuration(cell, unit)).toBe(written);
  });
});

describe('writtenClock', () => {
  it.each([
    ['8:13', '08:13'],
    ['08.13 Uhr', '08:13'],
    ['8h13', '08:13'],
    ['0813', '08:13'],
    ['9:20 pm', '21:20'],
    ['12:05 a.m.', '00:05'],
    ['13:05 pm', '13:05 pm'],
    ['08:13:30', '08:13:30'],
    ['02:30+01:00', '02:30+01:00'],
    ['813', '813'],
  ])('reads %s', (cell, written) => {
    expect(writtenClock(cell)).toBe(written);
  });
});

describe('writtenDate', () => {
  it.each([
    ['Friday 12 June 2026', '2026-06-12'],
    ['Leg 1, Fr. 12.06.', '2026-06-12'],
    ['Samstag, 13. Juni', '2026-06-13'],
    ['samedi 13 juin 2026', '2026-06-13'],
    ['sábado 13 de junio de 2026', '2026-06-13'],
    ['sabato 13 giugno 2026', '2026-06-13'],
    ['Friday, June 12th 2026', '2026-06-12'],
    ['12.6.26', '2026-06-12'],
    ['13/06/2026', '2026-06-13'],
    ['Day 2 - 06/13/2026', '2026-06-13'],
    // Only one of the two readings is a Friday.
    ['Fri 05/06/2026', '2026-06-05'],
    ['Wed 05/06/2026', '2026-05-06'],
    ['2026-06-12', '2026-06-12'],
    // The nearest year, over the turn of it too.
    ['2 January', '2027-01-02', '2026-12-30'],
    ['30. Dezember', '2026-12-30', '2027-01-02'],
  ])('reads %s', (line, date, near = '2026-06-12') => {
    expect(writtenDate(line, near)).toMatchObject({ date, otherWeekday: null });
  });

  it('tells the weekday a date has where another is written', () => {
    expect(writtenDate('Thursday 12 June 2026', '2026-06-12')).toMatchObject({ otherWeekday: 'Friday' });
  });

  it('tells days that are not in the calendar, and lines without a date', () => {
    expect(writtenDate('31 June 2026', '2026-06-12')).toBe('malformed');
    expect(writtenDate('30.02.2026', '2026-06-12')).toBe('malformed');
    expect(writtenDate('Leg 2', '2026-06-12')).toBeNull();
    expect(writtenDate('Service park 30 min', '2026-06-12')).toBeNull();
  });
});

describe('mendSplitDecimals', () => {
  it('joins as many pairs as there are cells too many, and else nothing', () => {
    expect(mendSplitDecimals(['TC1', 'Au', '18', '40', '18', '40', '0:28'], 5)).toEqual([
      'TC1',
      'Au',
      '18,40',
      '18,40',
      '0:28',
    ]);
    const unclear = ['TC1', 'Au', '18', '40', '18', '0:28'];
    expect(mendSplitDecimals(unclear, 4)).toBe(unclear);
  });
});

describe('printed lines', () => {
  it('part code, name and figures between single spaces', () => {
    const { code, name, figures } = printedLine('SS6 Auwald 2 12,05 12,05 0:03 09:20 3');
    expect([code, name, figures.map((figure) => figure.text)]).toEqual([
      'SS6',
      'Auwald 2',
      ['12,05', '12,05', '0:03', '09:20', '3'],
    ]);
  });

  it('part them by columns where those are kept apart', () => {
    const { name, figures } = printedLine('  TC6   Auwald 2 am See     12  12   0:28   09:20');
    expect([name, figures.map((figure) => figure.text)]).toEqual([
      'Auwald 2 am See',
      ['12', '12', '0:28', '09:20'],
    ]);
  });

  it.each([
    ['24,3O', 'malformed'],
    ['13x35', 'malformed'],
    ['(17,65)', 'distance'],
    ['12 km', 'distance'],
    ['02:30+01:00', 'time'],
    ['26,1%', 'percent'],
    ['–', 'dash'],
    ['(II)', null],
    ['St.1', null],
    ['Au', null],
  ])('take %s for %s', (word, kind) => {
    expect(figureKind(word)).toBe(kind);
  });
});

describe('HaltNamer', () => {
  it('goes on in the letter chain and takes no name that is there', () => {
    const namer = new HaltNamer(['TC1', 'TC1A']);
    expect(namer.next()).toBe('TC0');
    namer.pass('TC0');
    expect(namer.next()).toBe('TC0A');
    namer.pass('SS1');
    namer.pass('RZ7');
    expect(namer.next()).toBe('TC1B');
  });
});
