import { describe, expect, it } from 'vitest';
import { VIENNA } from './fixtures';
import type { ItineraryProblem } from './model';
import { parseItineraryTable } from './parse-itinerary-table';

const GOOD = [
  'TC/SS,Location,SS km,Road km,Total km,Target time,First car due,Gap,Section,Start interval,Role,Repeat of',
  '"Leg 1, 2026-06-12",,,,,,,,,,,',
  'TC0,Start,,,,,09:00,,,,,',
  'TC1,Moorwald,,12.40,12.40,0:20,09:20,,,,,',
  'SS1,Moorwald,8.10,,8.10,,09:23,0:03,,,,',
  'TC1A,Service in,,6.20,14.30,0:25,09:48,,,,,',
  'TC1B,Service out,,,,0:30,10:18,,,,,',
  'TC2,Hollergraben,,9.00,9.00,0:22,10:40,,,,,',
  'SS2,Hollergraben,11.55,,11.55,,10:43,,,,,',
  'TC2A,Finish,,7.45,19.00,0:32,11:15,,,,,',
];

/** The good table with some rows exchanged; null drops a row, and rows are numbered as the person sees them. */
function tableWith(changes: Record<number, string | string[] | null>): string {
  return GOOD.flatMap((line, index) => {
    const change = changes[index + 1];
    return change === undefined ? [line] : change === null ? [] : change;
  }).join('\r\n');
}

interface Case {
  title: string;
  text: string;
  row: number | null;
  column: number | null;
  code: string;
  /** What the sentence tells the person to do. */
  toDo: RegExp;
}

const ERRORS: Case[] = [
  {
    title: 'nothing',
    text: ' \r\n ',
    row: null,
    column: null,
    code: 'empty-table',
    toDo: /Paste the itinerary with its headings/,
  },
  {
    title: 'headings only',
    text: GOOD[0] ?? '',
    row: null,
    column: null,
    code: 'empty-table',
    toDo: /Paste the rows/,
  },
  {
    title: 'prose',
    text: 'See you at service tomorrow',
    row: 1,
    column: null,
    code: 'header-missing',
    toDo: /Put these headings above the table: TC\/SS, Location/,
  },
  {
    title: 'more than 1 MB',
    text: 'x'.repeat(1_000_001),
    row: null,
    column: null,
    code: 'text-too-long',
    toDo: /Paste the itinerary table only/,
  },
  {
    title: 'more than 2,000 rows',
    text: `${GOOD[0]}\n${'TC1,a,,,,,09:00,,,,,\n'.repeat(2001)}`,
    row: null,
    column: null,
    code: 'too-many-rows',
    toDo: /Paste one event only/,
  },
  {
    title: 'no road column',
    text: tableWith({ 1: 'TC/SS,Location,SS km,,Total km,Target time,First car due' }),
    row: 1,
    column: null,
    code: 'column-missing',
    toDo: /“Road km” is missing\. Add it/,
  },
  {
    title: 'the same column twice',
    text: tableWith({ 1: (GOOD[0] ?? '').replace('Total km', 'Liaison') }),
    row: 1,
    column: 5,
    code: 'column-twice',
    toDo: /Delete one of the two/,
  },
  {
    title: 'a quote that never ends',
    text: tableWith({ 5: 'SS1,"Moorwald,8.10,,8.10,,09:23,0:03,,,,' }),
    row: 5,
    column: null,
    code: 'open-quote',
    toDo: /Add the closing double quote/,
  },
  {
    title: 'a cell too many',
    text: tableWith({ 5: 'SS1,Moorwald,8.10,,8.10,,09:23,0:03,,,,,wet' }),
    row: 5,
    column: 13,
    code: 'too-many-cells',
    toDo: /Delete the cells that are too many/,
  },
  {
    title: 'a decimal comma in a comma separated row',
    text: tableWith({ 5: 'SS1,Moorwald,8,10,,8,10,,09:23,0:03,,,,' }),
    row: 5,
    column: 3,
    code: 'decimal-comma',
    toDo: /“8,10” in row 5 was cut in two at its comma\. Put kilometres/,
  },
  {
    title: 'letters for kilometres',
    text: tableWith({ 5: 'SS1,Moorwald,8.1O,,8.10,,09:23,0:03,,,,' }),
    row: 5,
    column: 3,
    code: 'number-malformed',
    toDo: /“8\.1O” cannot be read as SS km\. Write kilometres as 16\.65/,
  },
  {
    title: 'a thousands separator',
    text: tableWith({ 4: 'TC1,Moorwald,,"1,212.40",,0:20,09:20,,,,,' }),
    row: 4,
    column: 4,
    code: 'number-malformed',
    toDo: /without a thousands separator/,
  },
  {
    title: 'negative stage kilometres',
    text: tableWith({ 5: 'SS1,Moorwald,-8.10,,,,09:23,0:03,,,,' }),
    row: 5,
    column: 3,
    code: 'km-negative',
    toDo: /Delete the minus sign/,
  },
  {
    title: 'negative road kilometres',
    text: tableWith({ 4: 'TC1,Moorwald,,−12.40,,0:20,09:20,,,,,' }),
    row: 4,
    column: 4,
    code: 'km-negative',
    toDo: /Delete the minus sign/,
  },
  {
    title: 'a stage of 810 km',
    text: tableWith({ 5: 'SS1,Moorwald,810,,,,09:23,0:03,,,,' }),
    row: 5,
    column: 3,
    code: 'stage-km-absurd',
    toDo: /Check the decimal point/,
  },
  {
    title: 'a road of 1,240 km',
    text: tableWith({ 4: 'TC1,Moorwald,,1240,,0:20,09:20,,,,,' }),
    row: 4,
    column: 4,
    code: 'road-km-absurd',
    toDo: /Check the decimal point/,
  },
  {
    title: 'a stage without kilometres',
    text: tableWith({ 5: 'SS1,Moorwald,,,,,09:23,0:03,,,,' }),
    row: 5,
    column: 3,
    code: 'stage-km-missing',
    toDo: /Write its length/,
  },
  {
    title: 'stage kilometres on a control',
    text: tableWith({ 4: 'TC1,Moorwald,8.10,12.40,,0:20,09:20,,,,,' }),
    row: 4,
    column: 3,
    code: 'cell-misplaced',
    toDo: /Move it to the row of the stage/,
  },
  {
    title: 'road kilometres on a stage',
    text: tableWith({ 5: 'SS1,Moorwald,8.10,6.20,,,09:23,0:03,,,,' }),
    row: 5,
    column: 4,
    code: 'cell-misplaced',
    toDo: /Move it to the row of the next control/,
  },
  {
    title: 'a time of day that is none',
    text: tableWith({ 4: 'TC1,Moorwald,,12.40,12.40,0:20,9.20,,,,,' }),
    row: 4,
    column: 7,
    code: 'time-malformed',
    toDo: /Write the time of day as 08:13/,
  },
  {
    title: 'hour 25',
    text: tableWith({ 10: 'TC2A,Finish,,7.45,19.00,0:32,25:15,,,,,' }),
    row: 10,
    column: 7,
    code: 'time-malformed',
    toDo: /Write the time of day/,
  },
  {
    title: 'a target time in words',
    text: tableWith({ 4: 'TC1,Moorwald,,12.40,12.40,20 min,09:20,,,,,' }),
    row: 4,
    column: 6,
    code: 'time-malformed',
    toDo: /Write hours and minutes as 0:44/,
  },
  {
    title: 'a target time of nothing',
    text: tableWith({ 4: 'TC1,Moorwald,,12.40,12.40,0:00,09:20,,,,,' }),
    row: 4,
    column: 6,
    code: 'target-zero',
    toDo: /Write the time allowed/,
  },
  {
    title: 'a target time of 20 hours',
    text: tableWith({ 4: 'TC1,Moorwald,,12.40,12.40,20:00,09:20,,,,,' }),
    row: 4,
    column: 6,
    code: 'target-absurd',
    toDo: /Write it in hours and minutes/,
  },
  {
    title: 'a gap that is no time',
    text: tableWith({ 5: 'SS1,Moorwald,8.10,,8.10,,09:23,soon,,,,' }),
    row: 5,
    column: 8,
    code: 'time-malformed',
    toDo: /Write the gap in minutes/,
  },
  {
    title: 'a gap of an hour',
    text: tableWith({ 5: 'SS1,Moorwald,8.10,,8.10,,09:23,1:00,,,,' }),
    row: 5,
    column: 8,
    code: 'gap-absurd',
    toDo: /Correct the gap/,
  },
  {
    title: 'a row of an unknown kind',
    text: tableWith({ 7: ['TC1B,Service out,,,,0:30,10:18,,,,,', 'XX9,Somewhere,,,,,,,,,,'] }),
    row: 8,
    column: 1,
    code: 'unknown-row-kind',
    toDo: /or delete the row/,
  },
  {
    title: 'a row without a name',
    text: tableWith({ 7: ['TC1B,Service out,,,,0:30,10:18,,,,,', ',Somewhere,,,,,,,,,,'] }),
    row: 8,
    column: 1,
    code: 'unknown-row-kind',
    toDo: /no control or stage is named.*Write a control as TC5B/,
  },
  {
    title: 'a control twice',
    text: tableWith({ 8: 'TC1,Hollergraben,,9.00,9.00,0:22,10:40,,,,,' }),
    row: 8,
    column: 1,
    code: 'duplicate-id',
    toDo: /same name as TC1 \(row 4\)\. Give each/,
  },
  {
    title: 'a stage twice',
    text: tableWith({ 9: 'SS1,Hollergraben,11.55,,11.55,,10:43,,,,,' }),
    row: 9,
    column: 1,
    code: 'duplicate-id',
    toDo: /same name as SS1 \(row 5\)/,
  },
  {
    title: 'a stage in the first row',
    text: tableWith({ 3: null, 4: null }),
    row: 3,
    column: 1,
    code: 'stage-without-control',
    toDo: /Add the row of its control, TC1, above it/,
  },
  {
    title: 'a stage after a stage',
    text: tableWith({ 8: null, 6: null, 7: null }),
    row: 6,
    column: 1,
    code: 'stage-without-control',
    toDo: /Add the row of its control, TC2/,
  },
  {
    title: 'a stage in the last row',
    text: tableWith({ 10: null }),
    row: 9,
    column: 1,
    code: 'stage-without-next-control',
    toDo: /Add the control the cars drive to/,
  },
  {
    title: 'a service that ends before it starts',
    text: tableWith({ 7: 'TC1B,Service out,,,,,09:30,,,,,' }),
    row: 7,
    column: 7,
    code: 'service-ends-before-it-starts',
    toDo: /from TC1A \(row 6\) at 09:48 to TC1B \(row 7\) at 09:30.*Correct one/,
  },
  {
    title: 'a service of no time',
    text: tableWith({ 7: 'TC1B,Service out,,,,,09:48,,,,,' }),
    row: 7,
    column: 7,
    code: 'service-ends-before-it-starts',
    toDo: /takes no time\. Correct one/,
  },
  {
    title: 'a service nobody leaves',
    text: tableWith({ 7: null }),
    row: 6,
    column: 2,
    code: 'service-without-out',
    toDo: /Add the row “service out”/,
  },
  {
    title: 'a service nobody enters',
    text: tableWith({ 6: 'TC1A,Car wash,,6.20,14.30,0:25,09:48,,,,,' }),
    row: 7,
    column: 2,
    code: 'service-without-in',
    toDo: /Add the row “service in”/,
  },
  {
    title: 'a remote service nobody leaves',
    text: tableWith({ 10: 'TC2A,Remote service in,,7.45,19.00,0:32,11:15,,,,,' }),
    row: 10,
    column: 2,
    code: 'service-without-out',
    toDo: /Add the row “remote service out”/,
  },
  {
    title: 'time going backwards',
    text: tableWith({ 10: 'TC2A,Finish,,7.45,19.00,,10:15,,,,,' }),
    row: 10,
    column: 7,
    code: 'time-backwards',
    toDo: /TC2A \(row 10\) at 10:15 comes before SS2 \(row 9\) at 10:43.*Correct one/,
  },
  {
    title: 'time leaping',
    text: tableWith({ 10: 'TC2A,Finish,,7.45,19.00,,21:15,,,,,' }),
    row: 10,
    column: 7,
    code: 'time-leap',
    toDo: /Correct one of the two times, or begin a new leg/,
  },
  {
    title: 'clock and target time at odds',
    text: tableWith({ 6: 'TC1A,Service in,,6.20,14.30,0:26,09:48,,,,,' }),
    row: 6,
    column: 7,
    code: 'time-mismatch',
    toDo: /TC1A \(row 6\) shows 09:48, but SS1 \(row 5\) at 09:23 plus target time 0:26 gives 09:49\. Correct/,
  },
  {
    title: 'start and gap at odds',
    text: tableWith({ 5: 'SS1,Moorwald,8.10,,8.10,,09:23,0:04,,,,' }),
    row: 5,
    column: 7,
    code: 'time-mismatch',
    toDo: /plus gap 0:04 gives 09:24\. Correct/,
  },
  {
    title: 'no time at all',
    text: tableWith({ 3: 'TC0,Start,,,,,,,,,,' }),
    row: 3,
    column: 7,
    code: 'time-missing',
    toDo: /Write the time of day/,
  },
  {
    title: 'neither time nor target',
    text: tableWith({ 8: 'TC2,Hollergraben,,9.00,9.00,,,,,,,' }),
    row: 8,
    column: 7,
    code: 'time-missing',
    toDo: /no target time from which to reckon it\. Write/,
  },
  {
    title: 'a total that is no sum',
    text: tableWith({ 6: 'TC1A,Service in,,6.20,14.80,0:25,09:48,,,,,' }),
    row: 6,
    column: 5,
    code: 'total-mismatch',
    toDo: /shows 14\.80 km.*make 14\.30 km\. Correct the total/,
  },
  {
    title: 'a leg out of order',
    text: tableWith({ 8: ['"Leg 3, 2026-06-13",,,,,,,,,,,', GOOD[7] ?? ''] }),
    row: 8,
    column: 1,
    code: 'leg-out-of-order',
    toDo: /Number the legs 1, 2, 3/,
  },
  {
    title: 'a leg on a day that is none',
    text: tableWith({ 2: '"Leg 1, 2026-02-30",,,,,,,,,,,' }),
    row: 2,
    column: 1,
    code: 'leg-date-malformed',
    toDo: /Write it as 2026-06-13/,
  },
  {
    title: 'a leg on a day in words',
    text: tableWith({ 2: '"Leg 1, 13 June",,,,,,,,,,,' }),
    row: 2,
    column: 1,
    code: 'leg-date-malformed',
    toDo: /Write it as 2026-06-13/,
  },
  {
    title: 'a leg before the one before',
    text: tableWith({ 8: ['"Leg 2, 2026-06-11",,,,,,,,,,,', 'TC2,Hollergraben,,9.00,9.00,,10:40,,,,,'] }),
    row: 9,
    column: 7,
    code: 'time-backwards',
    toDo: /10:40 \(Thu 11 Jun 2026\) comes before.*Correct one/,
  },
  {
    title: 'an empty leg',
    text: tableWith({ 2: ['Leg 1,,,,,,,,,,,', 'Leg 1,,,,,,,,,,,'] }),
    row: 2,
    column: 1,
    code: 'leg-empty',
    toDo: /Add its rows or delete row 2/,
  },
  {
    title: 'a section that is no number',
    text: tableWith({ 4: 'TC1,Moorwald,,12.40,12.40,0:20,09:20,,one,,,' }),
    row: 4,
    column: 9,
    code: 'section-malformed',
    toDo: /whole number from 1/,
  },
  {
    title: 'sections backwards',
    text: tableWith({
      4: 'TC1,Moorwald,,12.40,12.40,0:20,09:20,,3,,,',
      8: 'TC2,Hollergraben,,9.00,9.00,0:22,10:40,,2,,,',
    }),
    row: 8,
    column: 9,
    code: 'section-order',
    toDo: /Number the sections upwards/,
  },
  {
    title: 'an interval that is none',
    text: tableWith({ 3: 'TC0,Start,,,,,09:00,,,every minute,,' }),
    row: 3,
    column: 10,
    code: 'interval-malformed',
    toDo: /Write start intervals as 60 s/,
  },
  {
    title: 'an interval of no time',
    text: tableWith({ 3: 'TC0,Start,,,,,09:00,,,0 s,,' }),
    row: 3,
    column: 10,
    code: 'interval-absurd',
    toDo: /Write an interval from 1 s/,
  },
  {
    title: 'start blocks out of order',
    text: tableWith({ 3: 'TC0,Start,,,,,09:00,,,"120 s, from 9: 60 s, from 5: 30 s",,' }),
    row: 3,
    column: 10,
    code: 'interval-malformed',
    toDo: /go upwards/,
  },
  {
    title: 'two intervals for one section',
    text: tableWith({
      3: 'TC0,Start,,,,,09:00,,,60 s,,',
      4: 'TC1,Moorwald,,12.40,12.40,0:20,09:20,,,120 s,,',
    }),
    row: 4,
    column: 10,
    code: 'interval-twice',
    toDo: /Write them once/,
  },
  {
    title: 'a role that is none',
    text: tableWith({ 4: 'TC1,Moorwald,,12.40,12.40,0:20,09:20,,,,car wash,' }),
    row: 4,
    column: 11,
    code: 'role-unknown',
    toDo: /or leave the cell empty/,
  },
  {
    title: 'a repeat of nothing',
    text: tableWith({ 9: 'SS2,Hollergraben,11.55,,11.55,,10:43,,,,,SS9' }),
    row: 9,
    column: 12,
    code: 'repeat-unknown',
    toDo: /Name an earlier stage/,
  },
];

const WARNINGS: Case[] = [
  {
    title: 'a column nobody knows',
    text: tableWith({ 1: `${GOOD[0]},Weather` }),
    row: 1,
    column: 13,
    code: 'column-unknown',
    toDo: /give it one of these headings/,
  },
  {
    title: 'a sum that is off',
    text: tableWith({ 10: [GOOD[9] ?? '', 'Total,,19.65,35.50,54.70,,,,,,,'] }),
    row: 11,
    column: 4,
    code: 'total-differs',
    toDo: /35\.50.*35\.05\. Check the rows/,
  },
  {
    title: 'a service without direction',
    text: tableWith({ 10: 'TC2A,Service park,,7.45,19.00,0:32,11:15,,,,,' }),
    row: 10,
    column: 2,
    code: 'role-unclear',
    toDo: /write for example “Service in”/,
  },
  {
    title: 'a regroup nobody leaves',
    text: tableWith({ 10: 'TC2A,Regroup in,,7.45,19.00,0:32,11:15,,,,,' }),
    row: 10,
    column: 2,
    code: 'halt-unpaired',
    toDo: /Add the row “regroup out”/,
  },
  {
    title: 'a stage with the control of another',
    text: tableWith({ 8: 'TC9,Hollergraben,,9.00,9.00,0:22,10:40,,,,,' }),
    row: 9,
    column: 1,
    code: 'stage-control-number',
    toDo: /Check that no row is missing/,
  },
  {
    title: 'a control without road',
    text: tableWith({ 8: 'TC2,Hollergraben,,,,0:22,10:40,,,,,' }),
    row: 8,
    column: 4,
    code: 'road-km-missing',
    toDo: /Write them if the car drives there/,
  },
  {
    title: 'road before the first row',
    text: tableWith({ 3: 'TC0,Start,,3.50,3.50,,09:00,,,,,' }),
    row: 3,
    column: 4,
    code: 'road-km-before-start',
    toDo: /Add the row the car sets out from/,
  },
];

function placeOf(problem: ItineraryProblem) {
  return { row: problem.row, column: problem.column, code: problem.code };
}

describe('malformed tables', () => {
  it('start from a table that is right', () => {
    expect(parseItineraryTable(tableWith({}), VIENNA)).toMatchObject({ ok: true, warnings: [] });
  });

  it.each(ERRORS)('refuses $title at its place and says what to do', ({ text, row, column, code, toDo }) => {
    const parsed = parseItineraryTable(text, VIENNA);
    expect(parsed.ok).toBe(false);
    const problems = parsed.ok ? [] : parsed.problems;
    expect(problems.map(placeOf)).toContainEqual({ row, column, code });
    const told = problems.find((one) => one.row === row && one.column === column && one.code === code);
    expect(told?.message).toMatch(toDo);
    expect(told?.severity).toBe('error');
    expect(told?.message.endsWith('.')).toBe(true);
  });

  it.each(WARNINGS)('reads but warns of $title', ({ text, row, column, code, toDo }) => {
    const parsed = parseItineraryTable(text, VIENNA);
    expect(parsed.ok ? [] : parsed.problems).toEqual([]);
    const warnings = parsed.ok ? parsed.warnings : [];
    expect(warnings.map(placeOf)).toEqual([{ row, column, code }]);
    expect(warnings[0]?.message).toMatch(toDo);
    expect(warnings[0]?.severity).toBe('warning');
  });

  it('tells every problem at once, in the order of the rows', () => {
    const text = tableWith({
      4: 'TC1,Moorwald,,-12.40,12.40,0:20,9.20,,,,,',
      5: 'SS1,Moorwald,8.1O,,8.10,,09:23,0:03,,,,',
      10: 'TC1A,Finish,,7.45,19.00,0:00,11:15,,,,,',
    });
    const parsed = parseItineraryTable(text, VIENNA);
    expect(parsed.ok ? [] : parsed.problems.map(placeOf)).toEqual([
      { row: 4, column: 4, code: 'km-negative' },
      { row: 4, column: 7, code: 'time-malformed' },
      { row: 5, column: 3, code: 'number-malformed' },
      { row: 10, column: 1, code: 'duplicate-id' },
      { row: 10, column: 6, code: 'target-zero' },
    ]);
  });

  it('quotes a pasted paragraph by its beginning and refuses a page of headings', () => {
    const long = parseItineraryTable(
      tableWith({ 5: `SS1,Moorwald,${'8'.repeat(500)},,,,09:23,0:03,,,,` }),
      VIENNA,
    );
    expect(long.ok ? '' : long.problems[0]?.message).toMatch(/^“8{39}…” cannot be read/);
    const wide = parseItineraryTable(tableWith({ 1: `${GOOD[0]}${',x'.repeat(60)}` }), VIENNA);
    expect(wide.ok ? [] : wide.problems.map(placeOf)).toContainEqual({
      row: 1,
      column: 61,
      code: 'too-many-cells',
    });
  });

  it('names the heading as the person wrote it', () => {
    const text = tableWith({
      1: (GOOD[0] ?? '').replace('Road km', 'LIAISON (km)'),
      4: 'TC1,Moorwald,,x,,0:20,09:20,,,,,',
    });
    const parsed = parseItineraryTable(text, VIENNA);
    expect(parsed.ok ? [] : parsed.problems).toEqual([
      {
        row: 4,
        column: 4,
        field: 'LIAISON (km)',
        code: 'number-malformed',
        message:
          '“x” cannot be read as LIAISON (km). Write kilometres as 16.65 or 16,65, without a thousands separator.',
        severity: 'error',
      },
    ]);
  });
});
