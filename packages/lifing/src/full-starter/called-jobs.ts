import type { JobCard } from '../job-card';
import { starterCard } from '../starter-parts';
import { ONLY_WHEN_CALLED, UNDER_CAR } from './parts';

/** Looks at the whole car that something which happened calls for. */
export function calledJobs(): JobCard[] {
  return [
    starterCard({
      id: 'after-an-off',
      name: 'After an off or a hit: look it over',
      place: 'wholeCar',
      seconds: 300,
      people: 2,
      intervals: ONLY_WHEN_CALLED,
      caution: `${UNDER_CAR} The event's rules say whether it must be shown to an official.`,
      tools: ['torch', 'straightedge', 'pry bar'],
      instruction:
        'Wheel, arm and steering at the side that was hit, radiator, guard, pipes, cage feet, belts. Grass out of the radiator and off the exhaust.',
    }),
    starterCard({
      id: 'after-a-hard-landing',
      name: 'After a hard landing: look',
      place: 'underCar',
      seconds: 240,
      intervals: ONLY_WHEN_CALLED,
      caution: UNDER_CAR,
      tools: ['torch', 'pry bar'],
      instruction: 'Damper tops, springs, subframe and engine mounts, guard, exhaust, battery, seats.',
    }),
    starterCard({
      id: 'after-a-ford',
      name: 'After a ford: look',
      place: 'engineBay',
      seconds: 120,
      intervals: ONLY_WHEN_CALLED,
      tools: ['torch', 'cloth'],
      instruction: 'Air box dry, belt on and dry, breathers up, lamps and plugs without water, brakes bite.',
    }),
    starterCard({
      id: 'look-at-new-part',
      name: 'Newly fitted: look again',
      place: 'wholeCar',
      seconds: 120,
      intervals: ONLY_WHEN_CALLED,
      tools: ['torch', 'spanner'],
      instruction: 'What was fitted a stage ago: tight, dry, in line, not too hot.',
    }),
  ];
}
