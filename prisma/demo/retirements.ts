/** What the demo's organiser knows of the field when the event is half run; nothing yet of the cars still out there. */
const STOPPED = `17,N,out,in SS1,off road,,official
22,R,out for the day,after SS2,mechanical,half shaft,crew
25,N,out,in SS3,mechanical,gearbox,crew
28,R,out,after SS3,mechanical,alternator,
33,N,out,in SS4,off road,,official
36,R,out,after TC3,withdrawn,,crew
38,N,did not start`;
/** In the order they started. */
export const STILL_OUT_THERE = [
  ...[1, 2, 3, 4, 5, 6, 8, 9].map((car) => ({ car, className: 'R' })),
  ...[11, 12, 14, 15, 19, 20, 23, 27, 31, 35].map((car) => ({ car, className: 'N' })),
];

export const DEMO_RETIREMENTS = [
  'Car,Class,What happened,Where,Cause,Part,Who says so',
  ...STILL_OUT_THERE.map(({ car, className }) => `${car},${className},running,after SS4`),
  STOPPED,
].join('\n');
