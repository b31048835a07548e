import type { JobCard } from '../job-card';
import { EVERY_DAY, reading, starterCard } from '../starter-parts';

/** The looks of a day inside the car. None says that the car is safe: the rules and qualified people do. */
export function cabinAndSafetyJobs(): JobCard[] {
  return [
    starterCard({
      id: 'harness',
      name: 'Harnesses: webbing, mounts, dates',
      place: 'cockpit',
      seconds: 240,
      intervals: EVERY_DAY,
      instruction: 'No fraying, no cut, mounts tight, labels in date.',
    }),
    starterCard({
      id: 'seat-bolts',
      name: 'Seat bolts and belt eyes',
      place: 'cockpit',
      seconds: 240,
      intervals: EVERY_DAY,
      conditionFactors: { jumps: 1300 },
      tools: ['torque wrench'],
      instruction: 'Torque as the seat maker says; about 25 Nm for an M8 of class 8.8.',
    }),
    starterCard({
      id: 'handbrake',
      name: 'Handbrake: travel',
      place: 'cockpit',
      seconds: 120,
      intervals: EVERY_DAY,
      readings: [reading({ id: 'clicks', name: 'Clicks', kind: 'setValue', unit: '', low: 3, high: 6 })],
      tools: ['spanner'],
      instruction: 'Three to six clicks, or locked at half its travel.',
    }),
    starterCard({
      id: 'plumbed-extinguisher',
      name: 'Extinguisher system: gauge, pins, dates',
      place: 'cockpit',
      seconds: 120,
      intervals: EVERY_DAY,
      readings: [reading({ id: 'gauge', name: 'Gauge in the green', kind: 'passFail', unit: '', low: 1 })],
      caution: 'It goes off when the pin is out and the pull is touched.',
    }),
    starterCard({
      id: 'hand-extinguisher',
      name: 'Hand extinguisher, triangle, first aid, OK and SOS board, cutters',
      place: 'cockpit',
      seconds: 120,
      intervals: EVERY_DAY,
      instruction: 'There, in reach when belted, in date.',
    }),
    starterCard({
      id: 'cage-and-cut-off',
      name: 'Roll cage padding and bolts, electrical cut-off',
      place: 'cockpit',
      seconds: 180,
      intervals: EVERY_DAY,
      conditionFactors: { jumps: 1300 },
      readings: [
        reading({ id: 'cut-off', name: 'Cut-off stops the engine', kind: 'passFail', unit: '', low: 1 }),
      ],
      tools: ['torque wrench', 'padding'],
    }),
    starterCard({
      id: 'helmets',
      name: 'Helmets, head restraints, suits',
      place: 'cockpit',
      seconds: 120,
      intervals: EVERY_DAY,
      instruction: 'Whole and in date, both of them.',
    }),
  ];
}
