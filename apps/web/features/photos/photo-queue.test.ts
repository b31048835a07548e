import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { KeptPhoto, PhotoBox } from './kept-photo';
import { PhotoQueue, type Standing } from './photo-queue';
import type { Sent } from './send-picture';

const PLACE = 'team.event';

const photoOf = (photoId: string, takenAt = 1): KeptPhoto => ({
  ...{ photoId, place: PLACE, owner: 'mia', ownerName: 'Mia', takenAt },
  ...{ file: new Uint8Array([1, 2, 3]), refused: null },
});

/** A phone's database that a test can look into; with `isFull` it takes nothing. */
function boxOf(...photos: KeptPhoto[]) {
  const kept = new Map(photos.map((photo) => [photo.photoId, photo]));
  const listeners = new Set<() => void>();
  const state = { isFull: false };
  const change = async (make: () => void) => {
    if (state.isFull) throw new Error('No room.');
    make();
    for (const listener of listeners) listener();
  };
  const box: PhotoBox = {
    read: async () => [...kept.values()],
    listOwners: async () => [...kept.values()],
    keep: (photo) => change(() => void kept.set(photo.photoId, photo)),
    drop: ({ photoId }) => change(() => void kept.delete(photoId)),
    clear: () => change(() => kept.clear()),
    hear(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
  return { box, kept, state };
}

function queueOver(
  box: PhotoBox,
  answers: Record<string, (Sent | Promise<Sent>)[]> = {},
  standings: Record<string, Standing> = {},
) {
  const sent: string[] = [];
  const queue = new PhotoQueue({
    box,
    place: PLACE,
    async send(photoId) {
      sent.push(photoId);
      return answers[photoId]?.shift() ?? { ok: true };
    },
    standingOf: ({ photoId }) => standings[photoId] ?? 'send',
  });
  return { queue, sent, standings };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());
const settle = () => vi.advanceTimersByTimeAsync(0);

it('sends what an earlier page left, the oldest first, and keeps nothing that arrived', async () => {
  const { box, kept } = boxOf(photoOf('later', 2), photoOf('first', 1));
  const { queue, sent } = queueOver(box);
  queue.start();
  await settle();
  expect(sent).toEqual(['first', 'later']);
  expect([...kept.keys()]).toEqual([]);
  expect(queue.getPhotos()).toEqual([]);
});

it('lets a picture wait for its entry, and throws away one that was taken back', async () => {
  const { box, kept } = boxOf(photoOf('early'), photoOf('slip'));
  const { queue, sent, standings } = queueOver(box, {}, { early: 'wait', slip: 'gone' });
  queue.start();
  await settle();
  expect(sent).toEqual([]);
  expect([...kept.keys()]).toEqual(['early']);
  standings.early = 'send';
  queue.kick();
  await settle();
  expect(sent).toEqual(['early']);
});

it('tries again after a pause when the server is not reached, and at once when a network is back', async () => {
  const { box } = boxOf(photoOf('a'));
  const { queue, sent } = queueOver(box, { a: [LATER, LATER] });
  queue.start();
  await settle();
  expect(sent).toEqual(['a']);
  await vi.advanceTimersByTimeAsync(1000);
  expect(sent).toEqual(['a', 'a']);
  queue.resume();
  await settle();
  expect(sent).toEqual(['a', 'a', 'a']);
  expect(queue.getPhotos()).toEqual([]);
});

const LATER: Sent = { ok: false, why: 'later' };
const FULL: Sent = { ok: false, why: 'refused', sentence: 'It is full.' };

it('keeps what was refused, says why, goes on with the next, and sends it again only when asked', async () => {
  const { box, kept } = boxOf(photoOf('a', 1), photoOf('b', 2));
  const { queue, sent } = queueOver(box, { a: [FULL] });
  queue.start();
  await settle();
  expect(sent).toEqual(['a', 'b']);
  expect(queue.getPhotos()).toEqual([{ ...photoOf('a'), refused: 'It is full.' }]);
  expect(kept.get('a')?.refused).toBe('It is full.');
  queue.resume();
  await settle();
  expect(sent).toEqual(['a', 'b']);
  await queue.sendAgain(queue.getPhotos()[0] ?? photoOf('none'));
  await settle();
  expect(sent).toEqual(['a', 'b', 'a']);
  expect(kept.size).toBe(0);
});

it('asks nothing more of the server while nobody is signed in', async () => {
  const { box } = boxOf(photoOf('a', 1), photoOf('b', 2));
  const { queue, sent } = queueOver(box, { a: [{ ok: false, why: 'signInNeeded' }] });
  queue.start();
  await settle();
  queue.kick();
  await vi.advanceTimersByTimeAsync(60_000);
  expect(sent).toEqual(['a']);
  queue.resume();
  await settle();
  expect(sent).toEqual(['a', 'a', 'b']);
});

it('goes on after signing in while a request of the sign-in before was still under way', async () => {
  const { box } = boxOf(photoOf('a'));
  let answer: (sent: Sent) => void = () => undefined;
  const late = new Promise<Sent>((resolve) => {
    answer = resolve;
  });
  const { queue, sent } = queueOver(box, { a: [late] });
  queue.start();
  await settle();
  queue.resume();
  answer({ ok: false, why: 'signInNeeded' });
  await settle();
  expect(sent).toEqual(['a', 'a']);
  expect(queue.getPhotos()).toEqual([]);
});

it('sends from the page what the phone has no room for, and says that it is not kept', async () => {
  const { box, kept, state } = boxOf();
  const { queue, sent } = queueOver(box, { a: [LATER] });
  queue.start();
  await settle();
  state.isFull = true;
  expect(await queue.add(photoOf('a'))).toBe(false);
  expect(queue.getPhotos()).toEqual([photoOf('a')]);
  queue.kick();
  await vi.advanceTimersByTimeAsync(1000);
  expect(sent).toEqual(['a', 'a']);
  expect(queue.getPhotos()).toEqual([]);
  expect(kept.size).toBe(0);
});
