import { describe, expect, it } from 'vitest';
import { checkItinerary } from './check-itinerary';
import { goodItinerary, TWO_LEGS, VIENNA } from './fixtures';
import { parseItineraryTable } from './parse-itinerary-table';

const ROWS = [
  'TC/SS;Location;SS km;Road km;Target time;First car due;Start interval',
  'TC0;Start;;;;09:00;60 s',
  'TC1;Au;;9;0:20;09:20;',
  'SS1;Au;8;;;09:23;',
  'TC1A;Regroup in;;9;0:30;09:53;',
  'TC1B;Regroup out;;;0:15;10:08;120 s',
  'TC1C;Finish;;9;0:20;10:28;',
].join('\n');

describe('a printed column for car 0', () => {
  it('moves every time on by one interval, and nothing else', () => {
    const one = goodItinerary(TWO_LEGS);
    const zero = goodItinerary(TWO_LEGS, { ...VIENNA, printedFor: 'carZero' });
    expect(zero.points).toEqual(one.points.map((point) => ({ ...point, firstCarAt: point.firstCarAt + 60 })));
  });

  it('moves each section by its own interval and keeps clock and target time in agreement', () => {
    const one = goodItinerary(ROWS);
    const zero = goodItinerary(ROWS, { ...VIENNA, printedFor: 'carZero' });
    const moved = zero.points.map((point, index) => point.firstCarAt - (one.points[index]?.firstCarAt ?? 0));
    expect(moved).toEqual([60, 60, 60, 60, 120, 120]);
    // Position 1 stands a minute longer in a regroup that it enters at 60 s and leaves at 120 s.
    expect(zero.points[4]).toMatchObject({ allowedSeconds: 16 * 60 });
    expect(checkItinerary(zero)).toEqual([]);
  });

  it('says nothing of a control whose target time would be used up', () => {
    const text = ROWS.replace('60 s', '300 s')
      .replace('0:15;10:08;120 s', '0:04;09:57;30 s')
      .replace('10:28', '10:17');
    const parsed = parseItineraryTable(text, { ...VIENNA, printedFor: 'carZero' });
    expect(parsed.ok && parsed.itinerary.points[4]).toMatchObject({ allowedSeconds: null });
  });
});
