import type { TeamPerson } from '@halfshaft/contract';
import type { PersonId } from '@halfshaft/worklog';
import { useState } from 'react';
import { readStored, removeStored, writeStored } from '@/lib/storage';
import type { LoadedWork } from '../work/work-page';

/** People something can be recorded for: everyone but those who have left. */
export function recordablePeople(people: readonly TeamPerson[]): TeamPerson[] {
  return people.filter(({ membership }) => membership === null || membership.revokedAt === null);
}

/** Whom this phone records for: its own person, until another is chosen. Kept, since a scribe reloads too. */
export function useRecordFor({ replica, eventId }: LoadedWork): [PersonId, (person: PersonId) => void] {
  const key = `form.recordFor.${eventId}`;
  const me = replica.me.personId;
  const [chosen, setChosen] = useState(() => readStored(key));
  const known = recordablePeople(replica.people).some((person) => person.personId === chosen);
  const choose = (person: PersonId) => {
    setChosen(person);
    if (person === me) removeStored(key);
    else writeStored(key, person);
  };
  return [known && typeof chosen === 'string' ? chosen : me, choose];
}
