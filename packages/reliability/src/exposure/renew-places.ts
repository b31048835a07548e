import { endInHand } from './end-good';
import { placesSpokenOf } from './places';
import type { Step } from './timeline';
import { ageOf, beginPlace, type Down, type Place, placesOf, type Watch } from './watch';

/** A new part goes on at each of these places: the old one was good, or had failed and been counted before. */
export function renewPlaces(watch: Watch, step: Step, places: readonly (string | null)[]): void {
  forEachPlace(watch, places, (position, place) => {
    if (place.kind === 'running') endInHand(watch, position, place, step, 'replaced');
    beginPlace(watch, position, step, {
      part: place.part + 1,
      design: place.design,
      origin: 'new',
      entryAge: 0,
    });
  });
}

/** Another design from here on. An old part that stays in keeps its age, but its life so far belongs to the old design. */
export function modifyPlaces(watch: Watch, step: Step, said: string | null, newPart: boolean): void {
  forEachPlace(watch, placesOfGoodWord(watch, said), (position, place) => {
    if (place.kind === 'running') endInHand(watch, position, place, step, 'modified');
    const age = place.kind === 'running' ? ageOf(place, step.total) : place.age;
    const next = newPart
      ? { part: place.part + 1, origin: 'new' as const, entryAge: 0 }
      : { part: place.part, origin: 'modified' as const, entryAge: age };
    beginPlace(watch, position, step, { ...next, design: place.design + 1 });
  });
}

/** The same part runs on after its failure, as old as it was. */
export function repairPlaces(watch: Watch, step: Step, said: string | null): void {
  forEachPlace(watch, placesOfGoodWord(watch, said), (position, place) => {
    if (place.kind === 'down') repairPlace(watch, step, position, place);
  });
}

export function repairPlace(watch: Watch, step: Step, position: string | null, place: Down): void {
  const { part, design, age } = place;
  beginPlace(watch, position, step, { part, design, origin: 'repaired', entryAge: age });
}

/** Good news of a place the card has not says nothing of the others. */
export function placesOfGoodWord({ question }: Watch, said: string | null): readonly (string | null)[] {
  return placesSpokenOf(said, placesOf(question));
}

function forEachPlace(
  watch: Watch,
  places: readonly (string | null)[],
  change: (position: string | null, place: Place) => void,
): void {
  for (const position of places) {
    const place = watch.places.get(position);
    if (place) change(position, place);
  }
}
