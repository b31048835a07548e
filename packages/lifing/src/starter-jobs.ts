import type { JobCard, Surface } from './job-card';
import type { Interval } from './model';
import { EVERY_DAY, reading, starterCard } from './starter-parts';

// Every number below: common practice, no source; the car builder's values come first.

const UNDER_CAR_CAUTION = 'Nobody under the car until it stands on stands.';

export function starterJobs(surface: Surface): JobCard[] {
  return [
    wheelNuts(),
    oilLevel(),
    airFilter(),
    frontPads(surface),
    gearboxOil(),
    nightLamps(),
    spareAndTools(),
    walkRound(),
  ];
}

export function wheelNuts(): JobCard {
  return starterCard({
    id: 'wheel-nuts',
    name: 'Wheel nuts: torque',
    place: 'allCorners',
    seconds: 180,
    people: 2,
    readings: [
      reading({
        id: 'torque',
        name: 'Torque',
        kind: 'setValue',
        unit: 'Nm',
        positions: ['FL', 'FR', 'RL', 'RR'],
        low: 90,
        high: 150,
      }),
    ],
    needsSignature: true,
    caution: "A loose wheel comes off. Use the car builder's torque; a second person checks and signs.",
    tools: ['torque wrench'],
    instruction:
      'Car on its wheels. Torque every nut crosswise, the second person goes round again and signs.',
  });
}

export function oilLevel(): JobCard {
  return starterCard({
    id: 'oil-level',
    name: 'Engine oil level',
    place: 'engineBay',
    seconds: 120,
    readings: [
      reading({
        id: 'added',
        name: 'Oil added',
        kind: 'level',
        unit: 'l',
        decimals: 1,
        high: 5,
        required: true,
      }),
    ],
    caution: 'Hot oil.',
    tools: ['rag', 'oil', 'funnel'],
    instruction: 'Engine off and level. Fill to between the marks and note what went in, 0 when nothing did.',
  });
}

export function airFilter(): JobCard {
  return starterCard({
    id: 'air-filter',
    name: 'Air filter: clean or change',
    place: 'engineBay',
    seconds: 240,
    intervals: stageKilometres(60, 5),
    conditionFactors: { dust: 2000 },
    leastServiceSeconds: 600,
    caution: 'Do not breathe the dust.',
    tools: ['spare element', 'brush', 'cloth'],
    instruction: 'Wipe the box before the lid comes off. Look behind the filter: dust there is a finding.',
  });
}

export function frontPads(surface: Surface): JobCard {
  return starterCard({
    id: 'front-pads',
    name: 'Front brake pads: change',
    place: 'allCorners',
    fitsNewPart: true,
    seconds: 720,
    people: 2,
    intervals: stageKilometres(surface === 'tarmac' ? 100 : 150, 15),
    conditionFactors: { water: 1300, rough: 1200 },
    leastServiceSeconds: 1200,
    remoteAllowed: false,
    readings: [
      reading({
        id: 'pads',
        name: 'New pad thickness',
        kind: 'wear',
        unit: 'mm',
        decimals: 1,
        positions: ['FL', 'FR'],
      }),
    ],
    caution:
      'Hot discs and pads. Pump the pedal hard before the car moves, then bed in as the pad maker says.',
    tools: ['piston press', 'spanners', 'new pads'],
    instruction: 'Change both sides. Watch the fluid level while the pistons go back.',
  });
}

export function gearboxOil(): JobCard {
  return starterCard({
    id: 'gearbox-oil',
    name: 'Gearbox oil level',
    place: 'underCar',
    seconds: 300,
    intervals: EVERY_DAY,
    leastServiceSeconds: 900,
    remoteAllowed: false,
    caution: `${UNDER_CAR_CAUTION} Hot oil.`,
    tools: ['plug key', 'syringe', 'gearbox oil'],
    instruction: 'Level to the plug. Look for drops and for metal on the plug.',
  });
}

function nightLamps(): JobCard {
  return starterCard({
    id: 'night-lamps',
    name: 'Night lamps: fit and aim',
    place: 'body',
    seconds: 480,
    people: 2,
    // Darkness makes it due and no counter knows of it: it is brought up once an event, and the chief picks the service.
    intervals: [{ counter: 'events', every: 1, tolerance: 0 }],
    tools: ['lamp pod', 'spare bulbs'],
    instruction:
      'At the last service before a dark stage. Both beams work, aim on the mark. Off again after.',
  });
}

function spareAndTools(): JobCard {
  return starterCard({
    id: 'spare-and-tools',
    name: 'Spare wheel, jack and tools strapped',
    place: 'boot',
    seconds: 120,
    caution: 'What is loose flies forward.',
    instruction: 'Pull at every strap. Count the tools against the list.',
  });
}

export function walkRound(): JobCard {
  return starterCard({
    id: 'walk-round',
    name: 'Final walk-round',
    place: 'wholeCar',
    seconds: 120,
    caution: "The event's regulations and qualified people decide whether the car may go.",
    instruction:
      'No tool left on the car, wheel nuts signed, bonnet and boot latched, caps on, pins as the rules ask, out-time called.',
  });
}

function stageKilometres(every: number, tolerance: number): Interval[] {
  return [{ counter: 'stageMetres', every: every * 1000, tolerance: tolerance * 1000 }];
}
