import { expect, it } from 'vitest';
import type { WaitingAction } from './waiting-action';
import { countByName, waitsForSignIn } from './waiting-in-words';

it('says whose entries wait and for what', () => {
  expect(waitsForSignIn({ name: 'Mia', count: 2 })).toBe(
    '2 entries of Mia wait on this phone until Mia signs in here again.',
  );
  expect(waitsForSignIn({ name: 'Kai', count: 1 })).toBe(
    '1 entry of Kai waits on this phone until Kai signs in here again.',
  );
});

it('counts each person once, whatever the events', () => {
  const of = (ownerName: string, place: string) => ({ ownerName, place }) as WaitingAction;
  expect(countByName([of('Mia', 'one'), of('Kai', 'one'), of('Mia', 'two')])).toEqual([
    { name: 'Mia', count: 2 },
    { name: 'Kai', count: 1 },
  ]);
});
