import type { JobCard } from '../job-card';
import { EVERY_DAY, reading, starterCard } from '../starter-parts';
import { ONLY_WHEN_CALLED } from './parts';

export function lampAndLoomJobs(): JobCard[] {
  return [
    starterCard({
      id: 'night-lamps',
      name: 'Night lamps: fit and aim',
      place: 'body',
      seconds: 480,
      people: 2,
      intervals: ONLY_WHEN_CALLED,
      tools: ['lamp pod', 'spare bulbs'],
      instruction: 'Both beams work, aim on the mark.',
    }),
    starterCard({
      id: 'night-lamps-off',
      name: 'Night lamps: take off',
      place: 'body',
      seconds: 240,
      intervals: ONLY_WHEN_CALLED,
      tools: ['plug cover'],
      instruction: 'Plug covered, pins in, pod padded in the van.',
    }),
    starterCard({
      id: 'charge-with-lamps',
      name: 'Charge with all lamps on',
      place: 'engineBay',
      seconds: 180,
      intervals: EVERY_DAY,
      readings: [
        reading({
          id: 'charge',
          name: 'At 2000 a minute, all on',
          kind: 'setValue',
          unit: 'V',
          decimals: 1,
          low: 132,
          high: 148,
        }),
      ],
      caution: 'Engine running: hands and sleeves off the belt. Nobody under the car.',
      tools: ['meter'],
    }),
    starterCard({
      id: 'loom-and-faults',
      name: 'Sensors, loom, fault memory',
      place: 'engineBay',
      seconds: 360,
      intervals: EVERY_DAY,
      conditionFactors: { water: 1300, rough: 1300 },
      leastServiceSeconds: 900,
      readings: [reading({ id: 'new-codes', name: 'New fault codes', kind: 'level', unit: '', high: 0 })],
      tools: ['reader cable', 'cable ties'],
      instruction: 'No new code; no wire on an edge or near the exhaust.',
    }),
  ];
}
