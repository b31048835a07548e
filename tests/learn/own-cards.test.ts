import { adviseLimit } from '@halfshaft/reliability';
import pg from 'pg';
import { expect, it } from 'vitest';
import { foundTeamAtEvent, type TeamAtEvent } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { push } from './log-steps';
import { BRACKET, bracketEvents, bracketLives, type NewCard } from './own-card';

const house = keepHouse();

async function saveCard({ caller, teamId, carId }: TeamAtEvent, card: NewCard, cardId: string | null = null) {
  return (await caller.card.save({ teamId, carId, cardId, card })).cardId;
}

async function readCard({ caller, teamId, carId }: TeamAtEvent, cardId: string) {
  const card = (await caller.card.list({ teamId, carId })).find(({ id }) => id === cardId);
  if (!card) throw new Error('The card is not listed.');
  return card;
}

async function partOf({ caller, teamId, carId }: TeamAtEvent, cardId: string) {
  const { cars } = await caller.reliability.ofTeam({ teamId });
  return cars.find((car) => car.carId === carId)?.parts.find((part) => part.cardId === cardId);
}

async function playBracket(name: string, card: NewCard) {
  const team = await foundTeamAtEvent(house, name);
  const cardId = await saveCard(team, card);
  for (const { entered, bodies } of await bracketEvents(team, cardId)) await push(team, entered, bodies);
  return { team, cardId };
}

it('advises a limit for a team’s own card that fits a new part, by the lives in the log', async () => {
  const { team, cardId } = await playBracket('Own', BRACKET);
  const part = await partOf(team, cardId);
  expect(part).toMatchObject({ name: BRACKET.name, renews: true, counter: 'stageMetres', every: 60_000 });
  expect(part?.failures.map(({ at }) => at)).toEqual(bracketLives.failedAt);
  expect(part?.lives).toEqual({
    observations: bracketLives.observations,
    leftOut: { ageUnknown: 0, enteredLate: 0, failedWhenNew: 0, neverLooked: 0 },
  });
  const advice = adviseLimit(part?.lives.observations ?? []);
  expect(advice).toMatchObject({ ok: true, wears: true, fit: { failures: 4, lives: 6 } });
  if (!advice.ok) return;
  expect(advice.distance).toBeLessThan(bracketLives.longestFailed);
  expect(advice.bounds.low).toBeGreaterThan(0);
});

it('advises none while the card fits no new part, and reads the same log anew once it does', async () => {
  const { team, cardId } = await playBracket('Late', { ...BRACKET, fitsNewPart: false });
  const before = await partOf(team, cardId);
  expect(before).toMatchObject({ renews: false });
  // Of the first nobody knows how old it was; the one found at F was not changed as far as the log knows.
  expect(before?.failures).toHaveLength(3);
  expect(before?.lives.leftOut).toMatchObject({ ageUnknown: 1 });
  expect(adviseLimit(before?.lives.observations ?? [])).toMatchObject({
    ok: false,
    reason: 'tooFewFailures',
  });
  await saveCard(team, BRACKET, cardId);
  expect(await partOf(team, cardId)).toMatchObject({
    renews: true,
    lives: { observations: bracketLives.observations },
  });
});

it('keeps what the card says when an older page, which does not know of it, changes the card', async () => {
  const { team, cardId } = await playBracket('Older', BRACKET);
  const { fitsNewPart: _said, ...older } = BRACKET;
  await saveCard(team, { ...older, name: 'Bracket, renamed' }, cardId);
  expect(await readCard(team, cardId)).toMatchObject({ name: 'Bracket, renamed', fitsNewPart: true });
  expect(await partOf(team, cardId)).toMatchObject({ renews: true });
  await saveCard(team, { ...older, kind: 'round', looks: [{ id: 'look-1', words: 'bracket' }] }, cardId);
  expect(await readCard(team, cardId)).toMatchObject({ kind: 'round', fitsNewPart: false });

  const added = await saveCard(team, older);
  expect(await readCard(team, added)).toMatchObject({ fitsNewPart: false });
  const copied = await saveCard(team, { ...older, starterId: 'starter:front-pads' });
  expect(await readCard(team, copied)).toMatchObject({ fitsNewPart: true });
});

it('reads cards that were saved before they said it as what they began as', async () => {
  const team = await foundTeamAtEvent(house, 'Rows');
  const { caller, teamId, carId } = team;
  const own = await saveCard(team, BRACKET);
  const before = await caller.card.list({ teamId, carId });
  const owner = new pg.Client({ connectionString: house.database.ownerUrl });
  await owner.connect();
  await owner.query(`UPDATE card SET body = body - 'fitsNewPart' WHERE car_id = $1`, [carId]);
  await owner.end();
  const after = await caller.card.list({ teamId, carId });
  expect(after).toEqual(before.map((card) => (card.id === own ? { ...card, fitsNewPart: false } : card)));
  expect(after.filter(({ fitsNewPart }) => fitsNewPart).map(({ starterId }) => starterId)).toEqual([
    'starter:front-pads',
  ]);
  const { entries } = await caller.event.get({ teamId, eventId: team.eventId });
  expect(entries[0]?.cards).toEqual(after);
});

it('refuses a round that fits a new part, and changes nothing', async () => {
  const team = await foundTeamAtEvent(house, 'Round');
  const cardId = await saveCard(team, BRACKET);
  const round: NewCard = { ...BRACKET, kind: 'round', looks: [{ id: 'look-1', words: 'bracket' }] };
  await expect(saveCard(team, round, cardId)).rejects.toThrow('A round fits no new part');
  expect(await readCard(team, cardId)).toMatchObject({ kind: 'job', fitsNewPart: true });
});

it('takes it along in a table, and leaves it as it was where a table does not say it', async () => {
  const team = await foundTeamAtEvent(house, 'Table');
  const { caller, teamId, carId } = team;
  const own = await saveCard(team, BRACKET);
  const bring = (text: string) => caller.card.importTable({ teamId, carId, text, how: 'replace' });
  const row = (heading: string, cell: string) =>
    `Name,Place,Every,Minutes${heading}\n${BRACKET.name},engine bay,60 stage km,40${cell}\n`;
  expect(await bring(row('', ''))).toMatchObject({ ok: true, kept: 1 });
  expect(await readCard(team, own)).toMatchObject({ fitsNewPart: true });
  expect(await bring(row(',New part', ',no'))).toMatchObject({ ok: true, kept: 1 });
  expect(await readCard(team, own)).toMatchObject({ fitsNewPart: false });
  expect(await bring(row(',New part', ',yes'))).toMatchObject({ ok: true, kept: 1 });
  expect(await readCard(team, own)).toMatchObject({ fitsNewPart: true });
  expect(await bring(row(',New part', ',perhaps'))).toMatchObject({
    ok: false,
    problems: [{ row: 2, field: 'New part', code: 'notAChoice' }],
  });
});
