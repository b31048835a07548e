import * as fc from 'fast-check';
import type { Itinerary } from '../model';
import type { CarRecord, CarStop, CauseSource, StatedCause } from './model';

const CAUSES: StatedCause[] = ['mechanical', 'offRoad', 'time', 'withdrawn', 'other'];
const SOURCES: CauseSource[] = ['crew', 'official', 'unsure'];

/** Lists that are in order: each car finishes, stops for good, or stops in a section and comes back from a later one. */
export function carRecords(itinerary: Itinerary): fc.Arbitrary<CarRecord[]> {
  const cars = fc.uniqueArray(fc.integer({ min: 1, max: 200 }), { minLength: 1, maxLength: 30 });
  return cars.chain((numbers) =>
    fc
      .tuple(...numbers.map((number) => recordsOfCar(String(number), itinerary)))
      .map((lists) => lists.flat()),
  );
}

function recordsOfCar(carNumber: string, itinerary: Itinerary): fc.Arbitrary<CarRecord[]> {
  const sections = [...new Set(itinerary.points.map(({ section }) => section))];
  const [first = 1, ...later] = sections;
  const car = {
    carNumber,
    className: carNumber.endsWith('7') ? 'R' : '',
    reached: null,
    backFromSection: null,
  };
  const finished: CarRecord = { ...car, outcome: 'finished', stop: null };
  const outIn = (section: number) =>
    stopIn(itinerary, section).map((stop): CarRecord => ({ ...car, outcome: 'out', stop }));
  const comesBack = fc
    .constantFrom(...later)
    .chain((backFromSection) =>
      fc
        .tuple(stopIn(itinerary, first), fc.oneof(fc.constant(finished), outIn(backFromSection)))
        .map(([stop, last]): CarRecord[] => [{ ...car, outcome: 'outForDay', stop, backFromSection }, last]),
    );
  const alone = (outcome: 'notStarted' | 'notKnown'): CarRecord[] => [{ ...car, outcome, stop: null }];
  return fc.oneof(
    fc.constant<CarRecord[]>([finished]),
    fc.constant(alone('notStarted')),
    fc.constant(alone('notKnown')),
    stopIn(itinerary, first).map(({ place }): CarRecord[] => [
      { ...car, outcome: 'notKnown', stop: null, reached: place },
    ]),
    fc
      .constantFrom(...sections)
      .chain(outIn)
      .map((record): CarRecord[] => [record]),
    comesBack,
  );
}

function stopIn({ points }: Itinerary, section: number): fc.Arbitrary<CarStop> {
  const own = points.filter((point) => point.section === section);
  return fc.record({
    place: fc
      .constantFrom(...own)
      .chain(({ id, kind }) =>
        fc
          .constantFrom(...(kind === 'stage' ? (['in', 'after'] as const) : (['after'] as const)))
          .map((relation) => ({ relation, pointId: id })),
      ),
    cause: fc.constantFrom(...CAUSES),
    part: fc.constantFrom('', 'gearbox', 'half shaft'),
    source: fc.constantFrom(...SOURCES),
  });
}
