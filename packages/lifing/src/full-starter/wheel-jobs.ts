import type { JobCard, Surface } from '../job-card';
import { EVERY_DAY, reading, starterCard } from '../starter-parts';
import { everyStageKilometres, FOUR_WHEELS, ONLY_WHEN_CALLED, TWENTY_MINUTES, UNDER_CAR } from './parts';

const TYRE_KILOMETRES: Record<Surface, number> = { gravel: 90, tarmac: 120, snow: 120 };
const ACROSS_THE_TREAD = ['inner', 'middle', 'outer'];

export function wheelJobs(surface: Surface): JobCard[] {
  return [
    tyrePressures(),
    wheelsOff(),
    tyreChange(surface),
    tyreTemperatures(),
    ...(surface === 'snow' ? [] : [otherTyres('wet-tyres', 'Tyres for the wet: fit')]),
    ...(surface === 'snow' ? [] : [otherTyres('dry-tyres', 'Tyres for the dry: fit again')]),
    wheelChange(),
    punctureLook(),
    nutsAgain(),
    pressuresBeforeStage(),
  ];
}

function tyrePressures(): JobCard {
  return starterCard({
    id: 'tyre-pressures',
    name: 'Tyre pressures: set',
    place: 'allCorners',
    seconds: 120,
    readings: [
      // No band: the set pressure is the crew's choice of the day.
      reading({
        id: 'pressure',
        name: 'Tyre pressure',
        kind: 'setValue',
        unit: 'bar',
        decimals: 2,
        positions: FOUR_WHEELS,
      }),
    ],
    tools: ['pressure gauge', 'air'],
    instruction: 'To within 0.05 bar of what the crew asks for; note whether cold or hot.',
  });
}

function wheelsOff(): JobCard {
  return starterCard({
    id: 'wheels-off',
    name: 'Wheels off: clean the rims inside',
    place: 'allCorners',
    seconds: 240,
    people: 2,
    intervals: EVERY_DAY,
    conditionFactors: { water: 1300, rough: 1300 },
    leastServiceSeconds: TWENTY_MINUTES,
    remoteAllowed: false,
    caution: UNDER_CAR,
    tools: ['wheel gun', 'scraper'],
    instruction: 'No crack, bent by less than 3 mm. Wheels under the sill while they are off.',
  });
}

function tyreChange(surface: Surface): JobCard {
  return starterCard({
    id: 'tyre-change',
    name: 'Tyres: change',
    place: 'allCorners',
    seconds: 300,
    people: 2,
    intervals: [everyStageKilometres(TYRE_KILOMETRES[surface], 15)],
    conditionFactors: { rough: 1300 },
    leastServiceSeconds: TWENTY_MINUTES,
    remoteAllowed: false,
    caution: 'Only as many tyres as the event allows; the marks are checked.',
    tools: ['wheel gun', 'tyres', 'pressure gauge'],
    instruction: 'What the tread readings say comes first. Cord to be seen: off at once.',
  });
}

function tyreTemperatures(): JobCard {
  return starterCard({
    id: 'tyre-temperatures',
    name: 'Tyre temperatures',
    place: 'allCorners',
    seconds: 120,
    intervals: EVERY_DAY,
    readings: [
      reading({
        id: 'temperature',
        name: 'Tyre temperature',
        kind: 'hint',
        unit: '°C',
        positions: FOUR_WHEELS.flatMap((wheel) => ACROSS_THE_TREAD.map((place) => `${wheel} ${place}`)),
      }),
    ],
    tools: ['needle thermometer'],
    instruction: 'First thing when the car stops. Inner, middle and outer apart tell of pressure and camber.',
  });
}

function otherTyres(id: string, name: string): JobCard {
  return starterCard({
    id,
    name,
    place: 'allCorners',
    seconds: 300,
    people: 2,
    intervals: ONLY_WHEN_CALLED,
    leastServiceSeconds: 600,
    caution: 'Only as many tyres as the event allows; the marks are checked.',
    tools: ['wheel gun', 'tyres', 'pressure gauge'],
    instruction: 'The crew decides what to fit.',
  });
}

function punctureLook(): JobCard {
  return starterCard({
    id: 'after-a-puncture',
    name: 'After a puncture: rim, arch, spare',
    place: 'allCorners',
    seconds: 240,
    intervals: ONLY_WHEN_CALLED,
    caution: 'Torn edges cut.',
    tools: ['torch', 'spare wheel'],
    instruction: 'Rim, hose, damper and arch at that corner. Another spare aboard, strapped.',
  });
}

function wheelChange(): JobCard {
  return starterCard({
    id: 'wheel-change',
    name: 'Change a wheel',
    place: 'allCorners',
    seconds: 240,
    people: 2,
    intervals: ONLY_WHEN_CALLED,
    caution: 'Level ground, car in gear, nobody under it, out of the way of other cars.',
    tools: ['car jack', 'wheel brace', 'spare wheel'],
    instruction: 'Belts fastened again before moving off. Old wheel strapped.',
  });
}

function nutsAgain(): JobCard {
  return starterCard({
    id: 'wheel-nuts-again',
    name: 'Wheel nuts: go round again',
    place: 'allCorners',
    seconds: 120,
    intervals: ONLY_WHEN_CALLED,
    caution: 'A wheel that was off settles: its nuts come loose in the first kilometres.',
    tools: ['wheel brace'],
    instruction: 'At the first halt after a wheel was off, every nut of it.',
  });
}

function pressuresBeforeStage(): JobCard {
  return starterCard({
    id: 'pressures-before-stage',
    name: 'Tyre pressures before the stage',
    place: 'allCorners',
    seconds: 120,
    intervals: ONLY_WHEN_CALLED,
    readings: [
      reading({
        id: 'pressure',
        name: 'Tyre pressure',
        kind: 'setValue',
        unit: 'bar',
        decimals: 2,
        positions: FOUR_WHEELS,
      }),
    ],
    tools: ['hand gauge'],
    instruction: 'Warm from the road they read more; let down to what was asked for.',
  });
}
