import type { Flag, PersonId } from './model';

/**
 * A flag as both sides read it. `readingName` turns a reading's id into what the card calls it.
 *
 * @example
 * flagInWords({ code: 'alsoDoneBy', personId: 'p2' }, () => 'Kai', String) // 'Kai had already done it'
 */
export function flagInWords(
  flag: Flag,
  nameOf: (id: PersonId) => string,
  readingName: (readingId: string) => string,
): string {
  switch (flag.code) {
    case 'alsoDoneBy':
      return `${nameOf(flag.personId)} had already done it`;
    case 'heldByAnother':
      return `${nameOf(flag.personId)} had it at the time`;
    case 'afterCarryOver':
      return 'it had been carried over';
    case 'afterNotNeeded':
      return 'it had been marked not needed';
    case 'serviceCancelled':
      return 'the service had been cancelled';
    case 'afterRevocation':
      return 'came in after the person had left the team';
    case 'readingMissing': {
      const place = flag.position === null ? '' : ` ${flag.position}`;
      return `reading missing: ${readingName(flag.readingId)}${place}`;
    }
    case 'unknownTask':
      return 'the job was not on the list any more';
    case 'alsoRaisedBy':
      return `${nameOf(flag.personId)} had already raised it`;
    case 'alsoRecordedBy':
      return `${nameOf(flag.personId)} had already recorded it; the first stands`;
    case 'broughtIn':
      return `brought in from another server by ${nameOf(flag.personId)}`;
  }
}
