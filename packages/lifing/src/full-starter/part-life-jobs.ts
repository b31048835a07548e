import type { JobCard } from '../job-card';
import { starterCard } from '../starter-parts';
import { everyEngineHours, everyStageKilometres, WORKSHOP_ONLY } from './parts';

/** Parts that are used up over many events. No service is long enough: they show what to plan for at home. */
export function partLifeJobs(): JobCard[] {
  return [
    fitting(workshopJob('dampers', 'Dampers: rebuild', 'allCorners', 750)),
    workshopJob('gearbox-inspection', 'Gearbox: open and look', 'underCar', 750),
    fitting(workshopJob('hubs', 'Hubs and bearings: renew', 'allCorners', 750)),
    fitting(workshopJob('driveshafts', 'Driveshafts: renew', 'underCar', 500)),
    {
      ...workshopJob('engine-rebuild', 'Engine: rebuild', 'engineBay', 3000),
      intervals: [everyStageKilometres(3000, 300), everyEngineHours(60)],
    },
    {
      ...fitting(workshopJob('timing-belt', 'Timing belt: renew', 'engineBay', 1000)),
      // A season of club events; the builder's figure comes first.
      intervals: [everyStageKilometres(1000, 0), { counter: 'events', every: 8, tolerance: 0 }],
    },
  ];
}

function fitting(card: JobCard): JobCard {
  return { ...card, fitsNewPart: true };
}

function workshopJob(id: string, name: string, place: JobCard['place'], kilometres: number): JobCard {
  return starterCard({
    id,
    name,
    place,
    seconds: 7200,
    intervals: [everyStageKilometres(kilometres, kilometres / 10)],
    conditionFactors: { rough: 1300, jumps: 1300 },
    leastServiceSeconds: WORKSHOP_ONLY,
    remoteAllowed: false,
    instruction: "In the workshop. The builder's own life for the part comes first.",
  });
}
