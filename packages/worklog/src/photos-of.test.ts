import { expect, it } from 'vitest';
import type { ActionBody, TaskRef } from './model';
import { photoIn, photosOf, photosOfCar } from './photos-of';
import { taskIdOf } from './task-id-of';
import { LEAK, NUTS, openBay, SNAG } from './testing/bay';
import { MIA } from './testing/people';

const record = (factId: string, ref: TaskRef): ActionBody => ({
  kind: 'recordFact',
  args: {
    factId,
    entryId: ref.entryId,
    at: { kind: 'service', serviceId: ref.serviceId },
    fact: { kind: 'photo', of: taskIdOf(ref), words: '', bytes: 9, sha256: '' },
  },
});
const inService = (ref: TaskRef, serviceId: string): TaskRef => ({ ...ref, serviceId });

it("finds a card's photos at its service, a snag's at every service, and none that was taken back", () => {
  const bay = openBay();
  bay.act(SNAG, MIA);
  bay.act(record('nuts', NUTS), MIA);
  bay.act(record('leak', LEAK), MIA);
  bay.act(record('slip', NUTS), MIA);
  bay.act({ kind: 'undo', args: { actionId: 'a4' } }, MIA);
  const idsOf = (ref: TaskRef) => photosOf(bay.state, ref).map(({ factId }) => factId);
  expect(idsOf(NUTS)).toEqual(['nuts']);
  expect(idsOf(inService(NUTS, 'C'))).toEqual([]);
  expect(idsOf(LEAK)).toEqual(['leak']);
  expect(idsOf(inService(LEAK, 'C'))).toEqual(['leak']);
  expect(idsOf({ ...NUTS, entryId: 'another car' })).toEqual([]);
  expect(photosOfCar(bay.state, NUTS.entryId).map(({ factId }) => factId)).toEqual(['nuts', 'leak']);
  expect(bay.log.map((entry) => photoIn(bay.state, entry)?.factId)).toEqual([
    undefined,
    'nuts',
    'leak',
    undefined,
    undefined,
  ]);
});
