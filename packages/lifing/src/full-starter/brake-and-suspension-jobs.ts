import type { JobCard, Surface } from '../job-card';
import { EVERY_DAY, reading, starterCard } from '../starter-parts';
import {
  EVERY_EVENT,
  everyStageKilometres,
  FOUR_WHEELS,
  QUARTER_OF_AN_HOUR,
  THREE_QUARTERS_OF_AN_HOUR,
  TWENTY_MINUTES,
  UNDER_CAR,
} from './parts';

export function brakeAndSuspensionJobs(surface: Surface): JobCard[] {
  return [rearPads(surface), discs(), bleedBrakes(), geometry(), hubPlay()];
}

function rearPads(surface: Surface): JobCard {
  return starterCard({
    id: 'rear-pads',
    name: 'Rear brake pads: change',
    place: 'allCorners',
    fitsNewPart: true,
    seconds: 720,
    people: 2,
    intervals: [everyStageKilometres(surface === 'tarmac' ? 160 : 200, 20)],
    conditionFactors: { water: 1300, rough: 1200 },
    leastServiceSeconds: TWENTY_MINUTES,
    remoteAllowed: false,
    readings: [
      reading({
        id: 'pads',
        name: 'New pad thickness',
        kind: 'wear',
        unit: 'mm',
        decimals: 1,
        positions: ['RL', 'RR'],
      }),
    ],
    caution:
      'Hot discs and pads. Pump the pedal hard before the car moves, then bed in as the pad maker says.',
    tools: ['piston press', 'spanners', 'new pads'],
    instruction: 'Change both sides. Watch the fluid level while the pistons go back.',
  });
}

function discs(): JobCard {
  return starterCard({
    id: 'discs',
    name: 'Brake discs: thickness, cracks, run-out',
    place: 'allCorners',
    seconds: 240,
    intervals: EVERY_DAY,
    leastServiceSeconds: TWENTY_MINUTES,
    remoteAllowed: false,
    readings: [
      // No limit: the least thickness is stamped on the disc.
      reading({
        id: 'disc',
        name: 'Disc thickness',
        kind: 'wear',
        unit: 'mm',
        decimals: 1,
        positions: FOUR_WHEELS,
      }),
      reading({
        id: 'run-out',
        name: 'Run-out',
        kind: 'level',
        unit: 'mm',
        decimals: 2,
        positions: FOUR_WHEELS,
        high: 10,
      }),
    ],
    caution: 'Discs are hot.',
    tools: ['micrometer', 'dial gauge'],
    instruction: 'A crack that runs to the edge: change the disc. The least thickness is stamped on it.',
  });
}

function bleedBrakes(): JobCard {
  return starterCard({
    id: 'bleed-brakes',
    name: 'Brakes: bleed',
    place: 'allCorners',
    seconds: 900,
    people: 2,
    intervals: [EVERY_EVENT],
    leastServiceSeconds: TWENTY_MINUTES,
    remoteAllowed: false,
    readings: [
      reading({ id: 'firm', name: 'Pedal firm', kind: 'passFail', unit: '', low: 1, required: true }),
    ],
    caution: 'Brake fluid eats paint and skin. Never mix silicone fluid with the other kinds.',
    tools: ['bleed kit', 'brake fluid', 'ring spanner'],
    instruction: 'Until no bubble comes. Fluid no older than one event or three months.',
  });
}

function geometry(): JobCard {
  return starterCard({
    id: 'geometry',
    name: 'Ride height, camber and toe by string',
    place: 'allCorners',
    seconds: 900,
    people: 2,
    intervals: EVERY_DAY,
    conditionFactors: { jumps: 1300, rough: 1300 },
    leastServiceSeconds: THREE_QUARTERS_OF_AN_HOUR,
    remoteAllowed: false,
    readings: [
      reading({
        id: 'toe',
        name: 'Toe off the set value',
        kind: 'setValue',
        unit: 'mm',
        decimals: 1,
        positions: ['front', 'rear'],
        low: -10,
        high: 10,
      }),
      reading({
        id: 'height',
        name: 'Ride height off the set value',
        kind: 'setValue',
        unit: 'mm',
        positions: FOUR_WHEELS,
        low: -5,
        high: 5,
      }),
    ],
    tools: ['string', 'camber gauge', 'tape measure'],
    instruction: 'Level ground, pressures set, car rolled back and forth first.',
  });
}

function hubPlay(): JobCard {
  return starterCard({
    id: 'hub-play',
    name: 'Hub bearings: play and noise, wheels free',
    place: 'allCorners',
    seconds: 120,
    people: 2,
    intervals: EVERY_DAY,
    conditionFactors: { water: 1300, rough: 1300 },
    leastServiceSeconds: QUARTER_OF_AN_HOUR,
    readings: [
      reading({
        id: 'free',
        name: 'Free of play',
        kind: 'passFail',
        unit: '',
        positions: FOUR_WHEELS,
        low: 1,
      }),
    ],
    caution: UNDER_CAR,
    instruction: 'One rocks at twelve and six, the other feels behind. Spin each wheel and listen.',
  });
}
