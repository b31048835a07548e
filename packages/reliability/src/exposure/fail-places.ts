import type { FeltWhere } from './car-history';
import { placesSpokenOf } from './places';
import type { Step } from './timeline';
import { ageOf, type Down, placesOf, type Running, type Watch, writeExposure } from './watch';

export interface SeenFailure {
  /** As it was said. */
  position: string | null;
  how: 'looked' | FeltWhere;
  temporary: boolean;
}

/**
 * A failure was seen. At one place that is the end of a life. Where several places may be meant, it counts for the car
 * but ends no life as failed, and none of them is watched on until it is changed or made good. Seen again, it is the
 * same failure.
 *
 * @returns the places that may have failed
 */
export function failPlaces(watch: Watch, step: Step, seen: SeenFailure): readonly (string | null)[] {
  const places = mayBeMeant(watch, seen.position);
  const running = places.flatMap((position) => {
    const place = watch.places.get(position);
    return place?.kind === 'running' && !isSameFailure(place, step) ? [{ position, place }] : [];
  });
  if (running.length === places.length) {
    const [first, ...others] = running;
    if (first) noteFailure(watch, step, others.length === 0 ? first.position : null);
    for (const { position, place } of running) {
      const next =
        others.length === 0
          ? endFailed(watch, step, position, place, seen)
          : endUnclear(watch, step, position, place);
      watch.places.set(position, { ...next, temporary: seen.temporary });
    }
  } else if (seen.temporary) patch(watch, places);
  return places;
}

/** A place the card has not may be any of its places. */
export function mayBeMeant({ question }: Watch, said: string | null): readonly (string | null)[] {
  const all = placesOf(question);
  const spokenOf = placesSpokenOf(said, all);
  return spokenOf.length > 0 ? spokenOf : all;
}

function isSameFailure({ afterFailure, from }: Running, { total }: Step): boolean {
  return afterFailure && from === total;
}

function noteFailure({ carId, question, failures }: Watch, step: Step, position: string | null): void {
  failures.push({ carId, cardId: question.cardId, position, at: step.total, spot: step.spot });
}

function endFailed(
  watch: Watch,
  step: Step,
  position: string | null,
  place: Running,
  { how }: SeenFailure,
): Down {
  const { total, totalBefore } = step;
  const felt = { here: total, sinceLastPoint: Math.max(place.goodTo, totalBefore), looked: place.goodTo };
  const end = { ending: 'failed' as const, to: total, goodTo: felt[how], ended: step.spot };
  writeExposure(watch, position, place, end);
  return { kind: 'down', part: place.part, design: place.design, age: ageOf(place, total), temporary: false };
}

function endUnclear(watch: Watch, step: Step, position: string | null, place: Running): Down {
  const to = Math.max(place.from, place.goodTo);
  writeExposure(watch, position, place, {
    ending: 'placeUnknown',
    to,
    goodTo: place.goodTo,
    ended: step.spot,
  });
  return { kind: 'down', part: place.part, design: place.design, age: null, temporary: false };
}

function patch(watch: Watch, places: readonly (string | null)[]): void {
  for (const position of places) {
    const place = watch.places.get(position);
    if (place?.kind === 'down') watch.places.set(position, { ...place, temporary: true });
  }
}
