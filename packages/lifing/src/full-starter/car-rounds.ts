import type { Drive, JobCard, Look, Surface } from '../job-card';
import { look, reading, starterCard } from '../starter-parts';
import { UNDER_CAR } from './parts';

export function underFrontRound(drive: Drive, surface: Surface): JobCard {
  return starterCard({
    id: 'under-front',
    name: 'Under the front',
    kind: 'round',
    place: 'underCar',
    seconds: 120,
    looks: [
      surface === 'tarmac'
        ? look('undertray', 'undertray whole, nothing hanging down')
        : look('guard', 'sump guard: no crack, no bolt missing, no mud packed above it'),
      look('subframe', 'subframe and crossmember bolts: paint marks in line'),
      look('gearbox', `gearbox${drive === 'four' ? ' and transfer' : ''}: no drops`),
      look('exhaust', 'exhaust joints and hangers: no blow, a finger clear all round'),
    ],
    caution: `${UNDER_CAR} The exhaust is hot.`,
    tools: ['torch', 'spanner', 'paint pen'],
  });
}

export function underRearRound(drive: Drive): JobCard {
  return starterCard({
    id: 'under-rear',
    name: 'Under the rear',
    kind: 'round',
    place: 'underCar',
    seconds: 90,
    looks: [
      look('pipes', 'fuel and brake pipes: clips there, not flattened, not chafed'),
      look('tank', 'tank, filter and pump: no weep'),
      ...(drive === 'front' ? [look('beam', 'rear axle bolts: paint marks in line')] : rearDriveLooks()),
    ],
    caution: UNDER_CAR,
    tools: ['torch', 'paint pen'],
  });
}

function rearDriveLooks(): Look[] {
  return [
    look('propshaft', 'propshaft bolts: paint marks in line, joints without play'),
    look('differential', 'rear differential: no drops, breather clear'),
  ];
}

export function engineBayRound(surface: Surface): JobCard {
  return starterCard({
    id: 'engine-bay',
    name: 'Engine bay',
    kind: 'round',
    place: 'engineBay',
    seconds: 150,
    looks: [
      look('coolant', 'coolant between the marks, no leak'),
      look('radiator', `radiator and intercooler free of ${surface === 'snow' ? 'snow and ice' : 'mud'}`),
      look('hoses', 'hoses, clips and boost pipes: no weep, no soft spot'),
      look('mounts', 'engine and gearbox mounts: no crack, marks in line'),
      look('fuel', 'fuel line and filter: no weep, no smell'),
      look('belt', 'belt whole and tight'),
      look('battery', 'battery clamp and terminals do not move'),
    ],
    readings: [
      // Only after hours at rest is this true; in service it is a hint.
      reading({ id: 'volts', name: 'Battery at rest', kind: 'hint', unit: 'V', decimals: 1, low: 124 }),
      reading({
        id: 'running-volts',
        name: 'Battery, engine running',
        kind: 'setValue',
        unit: 'V',
        decimals: 1,
        low: 138,
        high: 148,
      }),
    ],
    caution:
      'Hot oil and steam. The fan may start. Leave the coolant cap shut until it is cool enough to hold.',
    tools: ['torch', 'screwdriver', 'brush', 'meter'],
  });
}

export function cockpitRound(): JobCard {
  return starterCard({
    id: 'cockpit',
    name: 'Cockpit',
    kind: 'round',
    place: 'cockpit',
    seconds: 60,
    looks: [
      look('pedals', 'pedals at their height, firm; steering without play'),
      look('intercom', 'intercom, tripmeter, tracker and camera: all on, trip set back'),
      look('system-pin', 'extinguisher system: pin in while work goes on'),
      look('warnings', 'no warning lamp that was not there before'),
    ],
    tools: ['spare batteries'],
  });
}

export function bodyRound(surface: Surface): JobCard {
  return starterCard({
    id: 'body-and-lamps',
    name: 'Body and lamps',
    kind: 'round',
    place: 'body',
    seconds: 90,
    looks: [
      look('glass', 'glass, mirrors and lamps clean, wipers whole'),
      look('lamps', 'lamps, brake lamps, indicators and horn: all work'),
      look('bumpers', 'bumpers and arch liners: no rub mark on a tyre'),
      ...(surface === 'tarmac' ? [] : [look('flaps', 'mud flaps whole')]),
      look('pins', 'bonnet, boot and door pins: both latched, pull at them'),
      look('load', 'spare wheel, jack and tools strapped'),
    ],
    caution: 'Torn edges cut.',
    tools: ['cloth', 'glass spray', 'cable ties', 'tape'],
  });
}

export function crewRound(): JobCard {
  return starterCard({
    id: 'hear-the-crew',
    name: 'Hear the crew',
    kind: 'round',
    place: 'cockpit',
    seconds: 60,
    looks: [
      look('told', 'ask: hits, fords, noises, smells, warning lamps'),
      look('feel', 'ask: brakes, gears, steering, how it drives'),
      look('fuel', 'fuel: enough for the km to the next refuel and a seventh more'),
      look('needs', 'drink, food, notes and time card handed over'),
    ],
    readings: [reading({ id: 'fuel-left', name: 'Fuel left', kind: 'level', unit: 'l' })],
    tools: ['drinks'],
  });
}
