/**
 * Which places of a card a word speaks of: the place itself, all places at a wheel ("FL" of "FL inner"), the wheel of a
 * place named more exactly than the card does, or all of them when none was said. Empty for a place the card has not.
 */
export function placesSpokenOf(
  said: string | null,
  places: readonly (string | null)[],
): readonly (string | null)[] {
  if (said === null || places.includes(null)) return places;
  if (places.includes(said)) return [said];
  return places.filter((place) => wheelOf(place) === said || place === wheelOf(said));
}

function wheelOf(place: string | null): string | null {
  return place?.split(' ')[0] ?? null;
}
