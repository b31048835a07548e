import type { Drive, JobCard, Surface } from '../job-card';
import { EVERY_DAY, reading, starterCard } from '../starter-parts';
import {
  EVERY_EVENT,
  everyStageKilometres,
  HOT_OIL,
  QUARTER_OF_AN_HOUR,
  THREE_QUARTERS_OF_AN_HOUR,
  UNDER_CAR,
} from './parts';

export function underCarJobs(drive: Drive, surface: Surface): JobCard[] {
  return [
    gearboxOilChange(),
    ...(drive === 'front' ? [] : [differentialOil(drive), differentialOilChange(drive), propshaftTorque()]),
    ...(drive === 'four' ? [transferOil()] : []),
    ...(surface === 'tarmac' ? [] : [guardOff()]),
    subframeBolts(),
    clutch(),
  ];
}

function gearboxOilChange(): JobCard {
  return starterCard({
    id: 'gearbox-oil-change',
    name: 'Gearbox oil: change',
    place: 'underCar',
    fitsNewPart: true,
    seconds: 1200,
    intervals: [everyStageKilometres(300, 30), EVERY_EVENT],
    conditionFactors: { water: 1300 },
    leastServiceSeconds: THREE_QUARTERS_OF_AN_HOUR,
    remoteAllowed: false,
    caution: `${UNDER_CAR} ${HOT_OIL}`,
    tools: ['tray', 'plug key', 'gearbox oil'],
    instruction: 'Fluff on the magnet is ordinary; chips are a finding.',
  });
}

function differentialOil(drive: Drive): JobCard {
  return starterCard({
    id: 'differential-oil',
    name: drive === 'four' ? 'Differentials: oil level' : 'Rear differential: oil level',
    place: 'underCar',
    seconds: 480,
    intervals: EVERY_DAY,
    leastServiceSeconds: QUARTER_OF_AN_HOUR,
    remoteAllowed: false,
    caution: `${UNDER_CAR} ${HOT_OIL}`,
    tools: ['plug key', 'syringe', 'differential oil'],
    instruction: 'Level to the plug. Milky oil has had water in it.',
  });
}

function differentialOilChange(drive: Drive): JobCard {
  return starterCard({
    id: 'differential-oil-change',
    name: drive === 'four' ? 'Differentials: change the oil' : 'Rear differential: change the oil',
    place: 'underCar',
    fitsNewPart: true,
    seconds: 900,
    intervals: [everyStageKilometres(300, 30)],
    conditionFactors: { water: 1300 },
    leastServiceSeconds: THREE_QUARTERS_OF_AN_HOUR,
    remoteAllowed: false,
    caution: `${UNDER_CAR} ${HOT_OIL}`,
    tools: ['tray', 'plug key', 'differential oil'],
  });
}

function propshaftTorque(): JobCard {
  return starterCard({
    id: 'propshaft-bolts',
    name: 'Propshaft bolts: torque',
    place: 'underCar',
    seconds: 180,
    intervals: EVERY_DAY,
    leastServiceSeconds: QUARTER_OF_AN_HOUR,
    remoteAllowed: false,
    caution: `${UNDER_CAR} Out of gear, engine off.`,
    tools: ['torque wrench', 'paint pen', 'thread lock'],
    instruction: 'Torque as the builder says, joints without play, marks drawn anew.',
  });
}

function transferOil(): JobCard {
  return starterCard({
    id: 'transfer-oil',
    name: 'Transfer box: oil level',
    place: 'underCar',
    seconds: 180,
    intervals: EVERY_DAY,
    leastServiceSeconds: QUARTER_OF_AN_HOUR,
    remoteAllowed: false,
    caution: `${UNDER_CAR} ${HOT_OIL}`,
    tools: ['plug key', 'syringe', 'gearbox oil'],
  });
}

function guardOff(): JobCard {
  return starterCard({
    id: 'guard-off',
    name: 'Sump guard: off, clean, look above it',
    place: 'underCar',
    seconds: 900,
    people: 2,
    intervals: EVERY_DAY,
    leastServiceSeconds: THREE_QUARTERS_OF_AN_HOUR,
    remoteAllowed: false,
    caution: `${UNDER_CAR} The guard is heavy and falls: two people.`,
    tools: ['power driver', 'scraper', 'spare bolts'],
    instruction: 'Mud off, no crack, look at everything it hides before it goes back.',
  });
}

function subframeBolts(): JobCard {
  return starterCard({
    id: 'subframe-bolts',
    name: 'Subframe and crossmember bolts: torque',
    place: 'underCar',
    seconds: 300,
    intervals: [EVERY_EVENT],
    conditionFactors: { jumps: 1300, rough: 1300 },
    leastServiceSeconds: QUARTER_OF_AN_HOUR,
    remoteAllowed: false,
    caution: UNDER_CAR,
    tools: ['torque wrench', 'paint pen'],
    instruction: 'Torque as the builder says, marks drawn anew.',
  });
}

function clutch(): JobCard {
  return starterCard({
    id: 'clutch',
    name: 'Clutch: fluid and bite point',
    place: 'cockpit',
    seconds: 120,
    intervals: EVERY_DAY,
    readings: [
      reading({
        id: 'free-play',
        name: 'Pedal free play',
        kind: 'setValue',
        unit: 'mm',
        low: 5,
        high: 15,
      }),
    ],
    tools: ['clutch fluid'],
  });
}
