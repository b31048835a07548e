import type { Doer, PersonId } from '../model';

export const MIA: PersonId = 'mia';
export const KAI: PersonId = 'kai';
export const JO: PersonId = 'jo';
export const NAMES: ReadonlyMap<PersonId, string> = new Map([
  [MIA, 'Mia'],
  [KAI, 'Kai'],
  [JO, 'Jo'],
]);

export function nameOf(id: PersonId): string {
  return NAMES.get(id) ?? id;
}

export function doerOf(personId: PersonId, more: Partial<Doer> = {}): Doer {
  return { personId, enteredBy: personId, mayManage: false, revokedAt: null, ...more };
}

export const MANAGER: Doer = doerOf(JO, { mayManage: true });
