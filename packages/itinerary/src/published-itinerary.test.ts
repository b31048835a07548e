import { describe, expect, it } from 'vitest';
import { goodItinerary, VIENNA } from './fixtures';
import { formatClock } from './format';
import { servicesOf } from './services-of';

// Source: published itinerary of a 2018 world-level event, one loop, first car. Date and zone are ours. The regroup,
// super special and second regroup between TC4B and TC5B are not in the extract, so TC5B keeps its printed clock.
const HEADER = 'TC/SS\tLocation\tSS km\tLiaison km\tTotal km\tTarget time\tFirst car due';
const PUBLISHED: readonly (readonly [string, string, string, string, string, string])[] = [
  ['TC1B', 'Parc fermé out / Service in', '', '', '', '06:25'],
  ['TC1C', 'Service out', '', '', '0:15', '06:40'],
  ['TC2', 'Time control', '', '97.54', '1:30', '08:10'],
  ['SS2', 'Second stage', '16.65', '', '0:03', '08:13'],
  ['TC3', 'Time control', '', '19.53', '0:44', '08:57'],
  ['SS3', 'Third stage', '33.58', '', '0:03', '09:00'],
  ['TC4', 'Time control', '', '39.74', '1:10', '10:10'],
  ['SS4', 'Fourth stage', '23.85', '', '0:03', '10:13'],
  ['TC4A', 'Regroup in', '', '92.89', '1:40', '11:53'],
  ['TC4B', 'Regroup out', '', '', '0:12', '12:05'],
  ['TC5B', 'Regroup out / Service in', '', '', '', '12:48'],
  ['TC5C', 'Service out', '', '', '0:30', '13:18'],
];
const CLOCKS = PUBLISHED.map(([id, , , , , clock]) => `${id} ${clock}`);

function table(hasPrintedClock: (id: string) => boolean): string {
  const rows = PUBLISHED.map(([id, location, stageKm, roadKm, target, clock]) =>
    [id, location, stageKm, roadKm, '', target, hasPrintedClock(id) ? clock : ''].join('\t'),
  );
  return [HEADER, ...rows].join('\n');
}

function clocksOf(text: string): string[] {
  return goodItinerary(text).points.map(
    (point) => `${point.id} ${formatClock(point.firstCarAt, VIENNA.timeZone)}`,
  );
}

describe('the published loop', () => {
  it('reads to the minute as printed', () => {
    expect(clocksOf(table(() => true))).toEqual(CLOCKS);
  });

  it('comes out to the minute from the target times alone', () => {
    expect(clocksOf(table((id) => id === 'TC1B' || id === 'TC5B'))).toEqual(CLOCKS);
  });

  it('is refused when the road after a stage is counted from the stage control instead of its start', () => {
    const shifted = table(() => true).replace('0:44\t08:57', '0:44\t08:54');
    expect(() => goodItinerary(shifted)).toThrow(
      /TC3 \(row 6\) shows 08:54.*SS2 \(row 5\) at 08:13.*0:44 gives 08:57/,
    );
  });

  it('has its morning and mid-leg service', () => {
    const services = servicesOf(goodItinerary(table(() => true)));
    expect(
      services.map(({ id, inControl, outControl, allowedSeconds }) => [
        id,
        inControl,
        outControl,
        allowedSeconds,
      ]),
    ).toEqual([
      ['A', 'TC1B', 'TC1C', 900],
      ['B', 'TC5B', 'TC5C', 1800],
    ]);
  });

  it('is the same when imported from target times or from the clock', () => {
    expect(goodItinerary(table((id) => id === 'TC1B' || id === 'TC5B'))).toEqual(
      goodItinerary(table(() => true)),
    );
  });
});
