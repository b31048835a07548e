import type { CarHistory, PartQuestion } from './car-history';
import type { Ending, Exposure, Origin, PartFailure, Spot } from './exposure';
import type { Step } from './timeline';

/** A part being watched, or one that has failed and was neither changed nor made good yet. */
export type Place = Running | Down;

interface PartIdentity {
  part: number;
  design: number;
}

export interface Running extends PartIdentity {
  kind: 'running';
  origin: Origin;
  entryAge: number | null;
  from: number;
  goodTo: number;
  began: Spot;
  /** Taken up where the part failed: until the car moves on, the same failure may be written down again. */
  afterFailure: boolean;
}

export interface Down extends PartIdentity {
  kind: 'down';
  /** Age at the failure. */
  age: number | null;
  /** Patched: a look that finds the patch in order does not make the part good. */
  temporary: boolean;
}

/** The parts of one card on one car while its history is read. Filled step by step by the functions beside it. */
export interface Watch {
  carId: string;
  question: PartQuestion;
  places: Map<string | null, Place>;
  exposures: Exposure[];
  failures: PartFailure[];
}

/** The places of a card; one without a name when there is but one. */
export function placesOf({ positions }: PartQuestion): readonly (string | null)[] {
  return positions.length > 0 ? positions : [null];
}

/** Every part is on the car when the first event begins, as old as it was carried in. */
export function beginWatch(car: CarHistory, question: PartQuestion): Watch {
  const { cardId, counter } = question;
  const from = car.ranBefore[counter] ?? 0;
  const began = { eventId: car.events[0]?.eventId ?? '', point: 0 };
  const places = placesOf(question).map((position): [string | null, Place] => {
    const carried = car.carried.find((each) => each.cardId === cardId && each.position === position);
    const entryAge = carried?.age[counter] ?? null;
    const origin = entryAge === null ? 'unknown' : 'carried';
    const identity = { part: 1, design: 0, began, afterFailure: false };
    return [position, { kind: 'running', origin, entryAge, from, goodTo: from, ...identity }];
  });
  return { carId: car.carId, question, places: new Map(places), exposures: [], failures: [] };
}

/** The age of a part when the car has run `total`. */
export function ageOf({ entryAge, from }: Running, total: number): number | null {
  return entryAge === null ? null : entryAge + (total - from);
}

/** Writes down what was watched. Where nothing was driven and nothing failed there is nothing to write down. */
export function writeExposure(
  watch: Watch,
  position: string | null,
  place: Running,
  end: { ending: Ending; to: number; goodTo: number; ended: Spot },
): void {
  if (end.ending !== 'failed' && end.to === place.from) return;
  const { carId, question, exposures } = watch;
  const { part, design, origin, entryAge, from, began } = place;
  const identity = { carId, cardId: question.cardId, position, counter: question.counter, part, design };
  exposures.push({ ...identity, origin, entryAge, from, began, ...end });
}

/** Puts a part at a place and watches it from here on. */
export function beginPlace(
  watch: Watch,
  position: string | null,
  step: Step,
  part: PartIdentity &
    Pick<Running, 'origin' | 'entryAge'> &
    Partial<Pick<Running, 'goodTo' | 'afterFailure'>>,
): void {
  watch.places.set(position, {
    kind: 'running',
    from: step.total,
    goodTo: step.total,
    began: step.spot,
    afterFailure: false,
    ...part,
  });
}
