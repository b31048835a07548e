import { STILL_OUT_THERE } from './retirements';

/** When the first car is due, and how long service is: Service A and Service B of the demo's itinerary. */
const SERVICES = [
  { inControl: 'TC2A', outControl: 'TC2B', firstIn: 9 * 60 + 35, minutes: 20 },
  { inControl: 'TC4A', outControl: 'TC4B', firstIn: 11 * 60 + 33, minutes: 20 },
];
/** Minutes late at the ways in and out, service by service; all others were in time. */
const LATE: Readonly<Record<number, readonly [number, number][]>> = {
  5: [
    [0, 0],
    [0, 4],
  ],
  12: [
    [3, 5],
    [5, 5],
  ],
  19: [
    [0, 0],
    [2, 2],
  ],
  23: [
    [0, 3],
    [6, 17],
  ],
  31: [
    [0, 1],
    [0, 0],
  ],
};

/** Times that the demo's organiser has of the cars still running, at the ways in and out of service. */
export const DEMO_TIMES = [
  'Car,Control,Due,Time',
  ...STILL_OUT_THERE.flatMap(({ car }, position) =>
    SERVICES.flatMap(({ inControl, outControl, firstIn, minutes }, service) => {
      const [lateIn, lateOut] = LATE[car]?.[service] ?? [0, 0];
      const dueIn = firstIn + position;
      const dueOut = dueIn + minutes;
      return [
        `${car},${inControl},${clock(dueIn)},${clock(dueIn + lateIn)}`,
        `${car},${outControl},${clock(dueOut)},${clock(dueOut + lateOut)}`,
      ];
    }),
  ),
].join('\n');

function clock(minute: number): string {
  return `${Math.floor(minute / 60)}:${String(minute % 60).padStart(2, '0')}`;
}
