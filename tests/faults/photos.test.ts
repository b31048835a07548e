import { crc32, deflateSync } from 'node:zlib';
import pg from 'pg';
import sharp, { type Sharp } from 'sharp';
import { beforeAll, expect, it } from 'vitest';
import { redrawPicture } from '../../apps/api/src/picture';
import { foundTeamAtEvent, makeAction, type TeamAtEvent, taskRef } from '../support/event';
import { openHouse } from '../support/house';
import { keepHouse } from '../support/keep-house';
import { bringPicture, fetchPicture, photoOf, TINY_JPEG } from '../support/photo';

const house = keepHouse();
let team: TeamAtEvent;
beforeAll(async () => {
  team = await foundTeamAtEvent(house);
});

const task = (of: TeamAtEvent = team) => taskRef(of.entryId, of.cardIds[0] ?? '');

/** The log speaks of a photo whose picture is still on the phone. */
async function record(file: Uint8Array, of: TeamAtEvent = team): Promise<string> {
  return (await recordUndoable(file, of)).photoId;
}

async function recordUndoable(file: Uint8Array, of: TeamAtEvent) {
  const { photoId, body } = photoOf(task(of), file);
  const action = makeAction(body, of.personId);
  await pushOne(action, of);
  const undo = makeAction({ kind: 'undo', args: { actionId: action.actionId } }, of.personId);
  return { photoId, takeBack: () => pushOne(undo, of) };
}

async function pushOne(action: ReturnType<typeof makeAction>, { caller, teamId, eventId }: TeamAtEvent) {
  const { results } = await caller.work.push({ teamId, eventId, actions: [action] });
  expect(results[0]?.status).toBe('accepted');
}

const bring = (photoId: string, file: Uint8Array, type?: string, at = house, of = team) =>
  bringPicture({ url: at.url, teamId: of.teamId, photoId, cookie: of.cookie, file, ...(type && { type }) });
const isShown = async (photoId: string) =>
  (await fetchPicture(house.url, team.teamId, photoId, team.cookie)).status === 200;

/** Noise, so that the file is as large as such a picture gets. */
async function noise(width: number, height: number): Promise<Sharp> {
  const noisy = { type: 'gaussian', mean: 128, sigma: 40 } as const;
  const raw = await sharp({ create: { width, height, channels: 3, background: 'grey', noise: noisy } })
    .png()
    .toBuffer();
  return sharp(raw);
}

/** A PNG of one bit a pixel, all of them black: a hundred kilobytes that unpack to many megabytes. */
function bomb(side: number): Buffer {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(side, 0);
  header.writeUInt32BE(side, 4);
  header.set([1, 0, 0, 0, 0], 8);
  const rows = deflateSync(Buffer.alloc(side * (Math.ceil(side / 8) + 1)), { level: 9 });
  const chunk = (name: string, data: Buffer) => {
    const body = Buffer.concat([Buffer.from(name), data]);
    const ends = Buffer.alloc(8);
    ends.writeUInt32BE(data.length, 0);
    ends.writeUInt32BE(crc32(body), 4);
    return Buffer.concat([ends.subarray(0, 4), body, ends.subarray(4)]);
  };
  const start = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([start, chunk('IHDR', header), chunk('IDAT', rows), chunk('IEND', Buffer.alloc(0))]);
}

it('takes JPEG, PNG and WebP, and shows each as an upright JPEG without what the camera wrote into it', async () => {
  const place = { IFD0: { Copyright: 'somebody', Orientation: '6' } };
  const jpeg = await (await noise(60, 40)).jpeg().withExif(place).withMetadata({ orientation: 6 }).toBuffer();
  const png = await (await noise(60, 40)).png().toBuffer();
  const webp = await (await noise(60, 40)).webp().toBuffer();
  for (const [type, file, size] of [
    ['image/jpeg', jpeg, [40, 60]],
    ['image/png', png, [60, 40]],
    ['image/webp', webp, [60, 40]],
  ] as const) {
    const photoId = await record(file);
    expect(await bring(photoId, file, type)).toEqual({ status: 200, body: { ok: true } });
    const shown = await fetchPicture(house.url, team.teamId, photoId, team.cookie);
    const { format, width, height, exif } = await sharp(await shown.arrayBuffer()).metadata();
    expect({ format, size: [width, height], exif }, type).toEqual({ format: 'jpeg', size, exif: undefined });
  }
});

it('keeps one picture however often and at once it comes', async () => {
  const photoId = await record(TINY_JPEG);
  const answers = await Promise.all([1, 2, 3, 4].map(() => bring(photoId, TINY_JPEG)));
  answers.push(await bring(photoId, TINY_JPEG));
  expect(answers.map(({ status }) => status)).toEqual([200, 200, 200, 200, 200]);
  expect(await isShown(photoId)).toBe(true);
});

it('takes nothing that the log does not speak of: not before its action, not taken back, not another file', async () => {
  const { photoId } = photoOf(task());
  const early = await bring(photoId, TINY_JPEG);
  expect(early).toMatchObject({ status: 404, body: { code: 'unknown' } });

  const other = await bring(await record(TINY_JPEG), Buffer.concat([TINY_JPEG, Buffer.from('x')]));
  expect(other).toMatchObject({ status: 400, body: { code: 'badInput' } });
  expect(other.body.message).toContain('not the picture that the log speaks of');

  const { photoId: taken, takeBack } = await recordUndoable(TINY_JPEG, team);
  expect((await bring(taken, TINY_JPEG)).status).toBe(200);
  await takeBack();
  expect(await isShown(taken)).toBe(false);
  expect((await bring(taken, TINY_JPEG)).status).toBe(404);
});

const DAMAGED = 'damaged or of a kind that is not taken';
it.each([
  ['text that says it is a JPEG', async () => Buffer.from('no picture at all'), DAMAGED],
  [
    'a drawing of letters and lines',
    async () => Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>'),
    DAMAGED,
  ],
  ['a GIF', async () => (await noise(20, 20)).gif().toBuffer(), DAMAGED],
  ['a JPEG cut off in the middle', async () => cut(await (await noise(400, 300)).jpeg().toBuffer()), DAMAGED],
  ['a PNG cut off in the middle', async () => cut(await (await noise(200, 100)).png().toBuffer()), DAMAGED],
  ['a PNG of 30,000 × 30,000 pixels', async () => bomb(30_000), 'more than 8 million pixels'],
])('refuses %s with a sentence, and goes on', async (_name, make, sentence) => {
  const file = await make();
  const photoId = await record(file);
  const answer = await bring(photoId, file);
  expect([400, 413]).toContain(answer.status);
  expect(answer.body.message).toContain(sentence);
  expect(await isShown(photoId)).toBe(false);
  expect((await fetch(`${house.url}/healthz`)).status).toBe(200);
});

const cut = (file: Buffer) => file.subarray(0, file.length / 2);

it('refuses a body that is too large, is called something else, or is none', async () => {
  const photoId = await record(TINY_JPEG);
  const large = await bring(photoId, Buffer.alloc(1_000_001));
  expect(large).toMatchObject({ status: 413, body: { code: 'tooMuch' } });
  expect(large.body.message).toContain('larger than 1 MB');
  for (const type of ['image/svg+xml', 'text/html', 'application/json', 'multipart/form-data']) {
    const answer = await bring(photoId, TINY_JPEG, type);
    expect(answer, type).toMatchObject({ status: 400, body: { code: 'badInput' } });
  }
  expect((await bring(photoId, Buffer.alloc(0))).status).toBe(400);
  const nowhere = await fetch(`${house.url}/photo?team=1&photo=2`, { headers: { cookie: team.cookie } });
  expect(nowhere.status).toBe(400);
});

it('tells whose room is full, loses nothing, and takes it once there is room', async () => {
  const file = await (await noise(300, 300)).jpeg().toBuffer();
  const first = await record(file);
  const second = await record(file);
  const { database } = house;
  const stored = 'SELECT coalesce(sum(bytes), 0)::int AS bytes FROM photo';
  const bytesNow = async () => {
    const owner = new pg.Client({ connectionString: database.ownerUrl });
    await owner.connect();
    const { rows } = await owner.query<{ bytes: number }>(stored);
    await owner.end();
    return rows[0]?.bytes ?? 0;
  };
  expect((await bring(first, file)).status).toBe(200);
  const [room, one] = [await bytesNow(), await bytesOf(file)];
  for (const [limits, whose] of [
    [{ eventBytes: room + one - 1, teamBytes: 9e9 }, 'this event'],
    [{ eventBytes: 9e9, teamBytes: room + one - 1 }, 'your team'],
  ] as const) {
    const full = await openHouse({ database, photoLimits: limits });
    const answer = await bring(second, file, 'image/jpeg', full);
    await full.close();
    expect(answer).toMatchObject({ status: 413, body: { code: 'tooMuch' } });
    expect(answer.body.message).toContain(`those of ${whose} take up all`);
  }
  expect(await isShown(second)).toBe(false);
  const roomy = await openHouse({ database, photoLimits: { eventBytes: room + one, teamBytes: room + one } });
  expect((await bring(second, file, 'image/jpeg', roomy)).status).toBe(200);
  await roomy.close();
  expect(await isShown(second)).toBe(true);
});

it('never stores more than there is room for, however many come at once', async () => {
  const many = await foundTeamAtEvent(house, 'Many');
  const file = await (await noise(200, 200)).jpeg().toBuffer();
  const ids: string[] = [];
  for (let count = 0; count < 6; count += 1) ids.push(await record(file, many));
  const probe = await openHouse({ database: house.database, photoLimits: { eventBytes: 1, teamBytes: 9e9 } });
  expect((await bring(ids[0] ?? '', file, 'image/jpeg', probe, many)).status).toBe(413);
  await probe.close();
  const stored = await bytesOf(file);
  const tight = await openHouse({
    database: house.database,
    photoLimits: { eventBytes: stored * 2, teamBytes: 9e9 },
  });
  const answers = await Promise.all(ids.map((id) => bring(id, file, 'image/jpeg', tight, many)));
  await tight.close();
  expect(answers.filter(({ status }) => status === 200)).toHaveLength(2);
});

it('makes room for others when a photo is taken back', async () => {
  const few = await foundTeamAtEvent(house, 'Few');
  const file = await (await noise(200, 200)).jpeg().toBuffer();
  const tight = await openHouse({
    database: house.database,
    photoLimits: { eventBytes: await bytesOf(file), teamBytes: 9e9 },
  });
  const [slip, next] = [await recordUndoable(file, few), await recordUndoable(file, few)];
  const bringTight = async (photoId: string) => (await bring(photoId, file, 'image/jpeg', tight, few)).status;
  expect(await bringTight(slip.photoId)).toBe(200);
  expect(await bringTight(next.photoId)).toBe(413);
  await slip.takeBack();
  expect(await bringTight(next.photoId)).toBe(200);
  expect(await bringTight(slip.photoId)).toBe(404);
  const shown = (photoId: string) => fetchPicture(tight.url, few.teamId, photoId, few.cookie);
  expect([(await shown(slip.photoId)).status, (await shown(next.photoId)).status]).toEqual([404, 200]);
  await tight.close();
});

/** What a picture takes up once it is drawn anew. */
async function bytesOf(file: Buffer): Promise<number> {
  const drawn = await redrawPicture(file);
  return drawn.ok ? drawn.full.length + drawn.small.length : 0;
}
