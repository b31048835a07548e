import { underFrontRound, underRearRound } from './full-starter/car-rounds';
import type { Drive, JobCard, Surface } from './job-card';
import { look, reading, starterCard } from './starter-parts';

/** Common practice, no source; the car builder's values come first */
const LEAST_TREAD_TENTHS_OF_MM = 20;
/** Common practice, no source; the car builder's values come first */
const LEAST_PAD_TENTHS_OF_MM = 30;

const UNDER_CAR_CAUTION = 'Nobody under the car until it stands on stands. Discs and exhaust are hot.';
const HOT_ENGINE_CAUTION = 'Hot oil and steam. Leave the coolant cap shut until it is cool enough to hold.';

/** Five rounds carry the looks of every service. Times and limits: common practice, no source; the car builder's values come first. */
export function starterRounds(drive: Drive, surface: Surface): JobCard[] {
  return [
    frontCorners(),
    rearCorners(),
    engineBayAndFluids(),
    underFrontRound(drive, surface),
    underRearRound(drive),
  ];
}

function frontCorners(): JobCard {
  return starterCard({
    id: 'front-corners',
    name: 'Front corners',
    kind: 'round',
    place: 'allCorners',
    seconds: 240,
    looks: [
      ...cornerLooks(),
      look('steering', 'track rod ends: lock nut marks in line, no play'),
      look('driveshafts', 'driveshaft boots whole, no grease thrown'),
    ],
    readings: cornerReadings(['FL', 'FR']),
    caution: UNDER_CAR_CAUTION,
    tools: ['torch', 'tread gauge', 'pressure gauge', 'pry bar'],
  });
}

function rearCorners(): JobCard {
  return starterCard({
    id: 'rear-corners',
    name: 'Rear corners',
    kind: 'round',
    place: 'allCorners',
    seconds: 240,
    looks: [...cornerLooks(), look('handbrake', 'handbrake cable or hose free and whole')],
    readings: cornerReadings(['RL', 'RR']),
    caution: UNDER_CAR_CAUTION,
    tools: ['torch', 'tread gauge', 'pressure gauge', 'pry bar'],
  });
}

function cornerLooks() {
  return [
    look('tyres', 'tyres: cuts, bead, tread'),
    look('rims', 'rims clean inside, no crack, not bent'),
    look('pads', 'pads and discs: thickness, cracks to the edge'),
    look('calipers', 'caliper bolt marks in line, hoses not chafed'),
    look('joints', 'ball joints, bushes and hub bearings: no play'),
    look('dampers', 'dampers: no oil, top nuts tight'),
    look('arms', 'arms straight: compare left and right'),
  ];
}

function cornerReadings(positions: string[]) {
  const unit = 'mm';
  const low = { tread: LEAST_TREAD_TENTHS_OF_MM, pads: LEAST_PAD_TENTHS_OF_MM };
  return [
    reading({ id: 'tread', name: 'Tread', kind: 'wear', unit, decimals: 1, positions, low: low.tread }),
    reading({ id: 'pads', name: 'Pad thickness', kind: 'wear', unit, decimals: 1, positions, low: low.pads }),
    // No band: the set pressure is the crew's choice of the day.
    reading({ id: 'pressure', name: 'Tyre pressure', kind: 'setValue', unit: 'bar', decimals: 2, positions }),
  ];
}

function engineBayAndFluids(): JobCard {
  return starterCard({
    id: 'engine-bay-and-fluids',
    name: 'Engine bay and fluids',
    kind: 'round',
    place: 'engineBay',
    seconds: 240,
    looks: [
      look('coolant', 'coolant between the marks, no leak'),
      look('radiator', 'radiator and intercooler free of mud'),
      look('hoses', 'hoses, clips and boost pipes: no weep, no soft spot'),
      look('mounts', 'engine and gearbox mounts: no crack, marks in line'),
      look('fuel-pipes', 'fuel and brake pipes: no chafing, no weep'),
      look('belt', 'belt whole and tight'),
      look('battery', 'battery clamp and terminals do not move'),
    ],
    readings: [
      reading({ id: 'volts', name: 'Battery at rest', kind: 'level', unit: 'V', decimals: 1, low: 124 }),
    ],
    caution: HOT_ENGINE_CAUTION,
    tools: ['torch', 'screwdriver', 'brush'],
  });
}
