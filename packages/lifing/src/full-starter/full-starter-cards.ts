import type { Drive, JobCard, Surface } from '../job-card';
import { airFilter, frontPads, gearboxOil, oilLevel, walkRound, wheelNuts } from '../starter-jobs';
import { brakeAndSuspensionJobs } from './brake-and-suspension-jobs';
import { cabinAndSafetyJobs } from './cabin-and-safety-jobs';
import { calledJobs } from './called-jobs';
import {
  bodyRound,
  cockpitRound,
  crewRound,
  engineBayRound,
  underFrontRound,
  underRearRound,
} from './car-rounds';
import { cornerRounds } from './corner-rounds';
import { engineJobs } from './engine-jobs';
import { lampAndLoomJobs } from './lamp-and-loom-jobs';
import { partLifeJobs } from './part-life-jobs';
import { underCarJobs } from './under-car-jobs';
import { wheelJobs } from './wheel-jobs';

/**
 * The full set of cards for one kind of car: ten rounds that carry the looks of every service, and the jobs of a
 * club-level car by distance, engine hours, day and event; jobs that only a trigger calls for (`starterTriggers`); and
 * parts that are renewed in the workshop. The essentials stand first (`starterEssentialIds`), then the other rounds,
 * so that a list cut from the bottom keeps what must not be left out.
 *
 * What is due at an ordinary service in the middle of an event fits two people in twenty minutes. Ids are those of
 * `starterCards` where the work is the same; every call returns fresh objects. Times, intervals and limits are common
 * practice, no source: the car builder's values come first, and the event's regulations above all.
 *
 * @example
 * fullStarterCards('four', 'gravel').filter((card) => card.kind === 'round').length // 10
 */
export function fullStarterCards(drive: Drive, surface: Surface): JobCard[] {
  return [
    wheelNuts(),
    ...cornerRounds(drive, surface),
    oilLevel(),
    underFrontRound(drive, surface),
    walkRound(),

    engineBayRound(surface),
    underRearRound(drive),
    bodyRound(surface),
    cockpitRound(),
    crewRound(),

    airFilter(),
    frontPads(surface),
    gearboxOil(),
    ...wheelJobs(surface),
    ...brakeAndSuspensionJobs(surface),
    ...underCarJobs(drive, surface),
    ...engineJobs(),
    ...cabinAndSafetyJobs(),
    ...lampAndLoomJobs(),
    ...calledJobs(),
    ...partLifeJobs(),
  ];
}
