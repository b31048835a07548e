import type { CarRecord } from '@halfshaft/itinerary';

/** Whether nothing is known of a car but where it was seen last. */
export function isJustRunning({ outcome, backFromSection }: CarRecord): boolean {
  return outcome === 'notKnown' && backFromSection === null;
}

/**
 * The cars of which nobody has said how it ended, by where they were seen last.
 *
 * @example
 * runningInWords(records) // ['Running when last seen, after SS4: 1, 2, 3.', 'Not said what became of 9.']
 */
export function runningInWords(records: readonly CarRecord[]): string[] {
  const cars = new Map<string, string[]>();
  for (const { carNumber, reached } of records.filter(isJustRunning)) {
    const says = reached
      ? `Running when last seen, ${reached.relation} ${reached.pointId}:`
      : 'Not said what became of';
    cars.set(says, [...(cars.get(says) ?? []), carNumber]);
  }
  return [...cars].map(([says, numbers]) => `${says} ${numbers.join(', ')}.`);
}
