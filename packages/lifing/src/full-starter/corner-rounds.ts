import type { CarPlace, Drive, JobCard, Look, Surface } from '../job-card';
import { look, reading, starterCard } from '../starter-parts';

interface Corner {
  wheel: string;
  id: string;
  name: string;
  place: CarPlace;
  axle: 'front' | 'rear';
}

const CORNERS: readonly Corner[] = [
  { wheel: 'FL', id: 'front-left-corner', name: 'Front left corner', place: 'frontLeft', axle: 'front' },
  { wheel: 'FR', id: 'front-right-corner', name: 'Front right corner', place: 'frontRight', axle: 'front' },
  { wheel: 'RL', id: 'rear-left-corner', name: 'Rear left corner', place: 'rearLeft', axle: 'rear' },
  { wheel: 'RR', id: 'rear-right-corner', name: 'Rear right corner', place: 'rearRight', axle: 'rear' },
];

/** Tenths of a millimetre. 1.6 mm is the legal least in the UK and the EU; the rest: common practice, no source. */
const LEAST_TREAD: Record<Surface, number> = { gravel: 20, tarmac: 16, snow: 20 };
const LEAST_PAD = 30;

/** One round for each corner, so that each has one person and no one walks round the car. */
export function cornerRounds(drive: Drive, surface: Surface): JobCard[] {
  return CORNERS.map((corner) => cornerRound(corner, drive, surface));
}

function cornerRound({ wheel, id, name, place, axle }: Corner, drive: Drive, surface: Surface): JobCard {
  const unit = 'mm';
  const bothEdges = [`${wheel} inner`, `${wheel} outer`];
  return starterCard({
    id,
    name,
    kind: 'round',
    place,
    seconds: 90,
    looks: [
      ...looksOfAnyCorner(surface),
      ...(axle === 'front' ? FRONT_LOOKS : REAR_LOOKS),
      ...(drive === axle || drive === 'four'
        ? [look('driveshaft', 'driveshaft: boots whole, no grease thrown, no play by hand')]
        : []),
    ],
    readings: [
      reading({
        id: 'tread',
        name: 'Tread',
        kind: 'wear',
        unit,
        decimals: 1,
        positions: bothEdges,
        low: LEAST_TREAD[surface],
      }),
      reading({
        id: 'pads',
        name: 'Pad thickness',
        kind: 'wear',
        unit,
        decimals: 1,
        positions: [wheel],
        low: LEAST_PAD,
      }),
    ],
    caution: 'Discs are hot. Hands out of the wheel while anyone else turns it.',
    tools: ['torch', 'tread gauge', 'caliper gauge', 'pry bar'],
  });
}

function looksOfAnyCorner(surface: Surface): Look[] {
  return [
    look('tyre', `tyre: cuts, bead, tread${surface === 'snow' ? ', studs' : ''}`),
    look('rim', 'rim clean inside, no crack, not bent'),
    look('brake', 'pads and disc: thickness, no crack to the edge'),
    look('caliper', 'caliper bolt marks in line, hose not chafed'),
    look('joints', 'ball joints, rod ends and bushes: no play'),
    look('bearing', 'hub bearing: nothing to feel at twelve and six'),
    look('damper', 'damper: no oil, top nut tight'),
    look('arms', 'arms and links straight: compare with the other side'),
  ];
}

const FRONT_LOOKS = [look('tie-rod', 'tie rod: lock nut mark in line')];
const REAR_LOOKS = [look('handbrake', 'handbrake cable or hose free and whole')];
