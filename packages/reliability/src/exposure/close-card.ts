import type { FindingGrade, PartRecord } from './car-history';
import { failPlaces } from './fail-places';
import { placesSpokenOf } from './places';
import { renewPlaces, repairPlace } from './renew-places';
import type { Step } from './timeline';
import { placesOf, type Watch } from './watch';

type Closed = Extract<PartRecord, { kind: 'closed' }>;

/**
 * A task of the card was closed: first what was found of the parts that were on, then the new ones where closing means
 * those or a finding says so. A patched part was not changed.
 */
export function closeCard(watch: Watch, step: Step, { findings }: Closed): void {
  const failing = worstOfEachPlace(withoutEchoes(findings.filter(({ grade }) => isFailing(grade))));
  const [bad, patched] = [new Set<string | null>(), new Set<string | null>()];
  for (const { position, grade } of failing) {
    const temporary = grade === 'temporaryRepair';
    for (const place of failPlaces(watch, step, { position, how: 'looked', temporary })) {
      bad.add(place);
      if (temporary) patched.add(place);
    }
  }
  const places = placesOf(watch.question);
  const { doneRenews } = watch.question;
  const good = places.filter((place) => !bad.has(place));
  if (!doneRenews) foundGood(watch, step, good);
  const changed = doneRenews ? places : changedPlaces(findings, places);
  const renewed = changed.filter((place) => !patched.has(place));
  renewPlaces(watch, step, renewed);
}

/** Where a new part went on for a finding. Of several places it must be said which: no life begins on a guess. */
function changedPlaces(findings: Closed['findings'], places: readonly (string | null)[]) {
  const said = findings.filter(
    ({ newPart, position }) => newPart && (position !== null || places.length === 1),
  );
  const changed = new Set(said.flatMap(({ position }) => placesSpokenOf(position, places)));
  return places.filter((place) => changed.has(place));
}

function isFailing(grade: FindingGrade): boolean {
  return grade === 'needsWork' || grade === 'temporaryRepair';
}

/** What was said of a whole card or wheel beside something more exact speaks of the same failure. */
function withoutEchoes(failing: Closed['findings']): Closed['findings'] {
  return failing.filter(({ position }) => !failing.some((other) => isMoreExact(other.position, position)));
}

function isMoreExact(one: string | null, other: string | null): boolean {
  return one !== null && (other === null || one.startsWith(`${other} `));
}

/** Of two findings at one place the patch is what it was left with. */
function worstOfEachPlace(failing: Closed['findings']): Closed['findings'] {
  const patches = failing.filter(({ grade }) => grade === 'temporaryRepair');
  const patched = new Set(patches.map(({ position }) => position));
  return [...patches, ...failing.filter(({ position }) => !patched.has(position))];
}

/** Somebody looked and it was in order, or worth an eye: good so far. A patch found in order is still a patch. */
function foundGood(watch: Watch, step: Step, places: readonly (string | null)[]): void {
  for (const position of places) {
    const place = watch.places.get(position);
    if (place?.kind === 'running') watch.places.set(position, { ...place, goodTo: step.total });
    else if (place && !place.temporary) repairPlace(watch, step, position, place);
  }
}
