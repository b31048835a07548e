import { STILL_OUT_THERE } from './retirements';

/** When the first car is due at each control of the demo's itinerary, up to the end of Service B. */
const CONTROLS = {
  TC0: '8:00',
  TC1: '8:25',
  TC2: '8:58',
  TC2A: '9:35',
  TC2B: '9:55',
  TC3: '10:23',
  TC4: '10:56',
  TC4A: '11:33',
  TC4B: '11:53',
};
/** Minutes that cars were behind the timetable, in the order of the controls; all others were in time. */
const BEHIND: Readonly<Record<number, readonly number[]>> = {
  5: [0, 0, 0, 0, 0, 0, 0, 0, 4],
  12: [0, 0, 1, 3, 5, 5, 5, 5, 5],
  19: [0, 0, 0, 0, 0, 0, 2, 2, 2],
  23: [0, 0, 0, 0, 3, 3, 5, 6, 17],
  31: [0, 0, 0, 0, 1, 1, 0, 0, 0],
};

/** Times that the demo's organiser has of the cars still running. */
export const DEMO_TIMES = [
  'Car,Control,Due,Time',
  ...STILL_OUT_THERE.flatMap(({ car }, position) =>
    Object.entries(CONTROLS).map(([control, first], index) => {
      const due = minuteOf(first) + position;
      return `${car},${control},${clock(due)},${clock(due + (BEHIND[car]?.[index] ?? 0))}`;
    }),
  ),
].join('\n');

function minuteOf(written: string): number {
  const [hours = 0, minutes = 0] = written.split(':').map(Number);
  return hours * 60 + minutes;
}

function clock(minute: number): string {
  return `${Math.floor(minute / 60)}:${String(minute % 60).padStart(2, '0')}`;
}
