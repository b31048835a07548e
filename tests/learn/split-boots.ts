import type { Finding } from '@halfshaft/worklog';
import { foundTeamAtEvent } from '../support/event';
import type { House } from '../support/house';
import { close, driven, enterAgain, found, push } from './log-steps';

/** Driven when the car arrives at Service A, B, D and F of the fixture's itinerary and in all, in metres as printed in it. */
export const BOOTS_AT = { A: 18_650, B: 37_300, D: 63_500, F: 94_150 };
export const BOOTS_ALL = 107_900;

/** Split boots found at one look of a round over two events; each time a new one went on, or none. */
export async function playBoots(house: House, name: string, more: Pick<Finding, 'newPart'>) {
  const team = await foundTeamAtEvent(house, name);
  const second = await enterAgain(team, '2026-07-11');
  const { caller, teamId, carId } = team;
  const cards = await caller.card.list({ teamId, carId });
  const corner = cards.find(({ starterId }) => starterId === 'starter:front-corners');
  const look = corner?.looks.find(({ id }) => id === 'driveshafts');
  if (!corner || !look) throw new Error('The starter set has no such look.');
  const split = { ...found('needsWork', look.id, 'FL'), ...more };
  for (const { event, splitAt } of [
    { event: team, splitAt: ['A', 'D'] },
    { event: second, splitAt: ['A', 'B'] },
  ]) {
    const rounds = ['A', 'B', 'D', 'F'].map((service) =>
      close(event, corner.id, service, splitAt.includes(service) ? [split] : []),
    );
    await push(team, event, [...driven(event, 1, 2, 3, 4, 5, 6, 7, 8, 9), ...rounds]);
  }
  const [car] = (await caller.reliability.ofTeam({ teamId })).cars;
  const part = car?.parts.find(({ partId }) => partId.endsWith(look.id));
  if (!part) throw new Error('The look is not among what failed.');
  return { team, part, look, corner };
}
