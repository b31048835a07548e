import { randomUUID } from 'node:crypto';
import type { createTeamInput, keepVisitInput, keepVisitOutput } from '@halfshaft/contract';
import type { Store, TeamTx } from '@halfshaft/store';
import type { z } from 'zod';
import { createCar } from '../car/service';
import { enterNewCar, readItineraryText, saveNewEvent } from '../event/service';
import { createMember, createTeamRow, withNewTeam } from './data';

export { listMyTenants } from './data';

/** A surface says nothing of the car's name; the team renames it later. */
const FIRST_CAR_NAME = 'Our car';

interface Founding {
  store: Store;
  userId: string;
  now: number;
}

/** A new team with the account as its admin. */
export function createTeam(founding: Founding, input: z.infer<typeof createTeamInput>) {
  const teamId = randomUUID();
  return withNewTeam(founding.store, { teamId, userId: founding.userId }, async (tx) => {
    const personId = await found(tx, { ...founding, name: input.name, personName: input.personName });
    return { teamId, personId };
  });
}

/** Everything a visitor worked out, kept in one go: all of it or nothing. */
export async function keepVisit(
  founding: Founding,
  input: z.infer<typeof keepVisitInput>,
): Promise<z.infer<typeof keepVisitOutput>> {
  const { visit } = input;
  const read = readItineraryText(visit.itinerary);
  if (!read.ok) return read;
  const teamId = randomUUID();
  const { now, store, userId } = founding;
  return withNewTeam(store, { teamId, userId }, async (tx) => {
    const personId = await found(tx, { ...founding, name: input.teamName, personName: input.personName });
    const car = {
      name: FIRST_CAR_NAME,
      drive: visit.drive,
      surface: visit.surface,
      starterCards: 'small' as const,
    };
    const carId = await createCar(tx, car, now);
    const event = { name: input.eventName, text: visit.itinerary, itinerary: read.itinerary };
    const eventId = await saveNewEvent(tx, event, { personId, now });
    const { startPosition, positionsBySection, people } = visit;
    const entry = { eventId, carId, carNumber: String(startPosition), startPosition, people };
    await enterNewCar(tx, { ...entry, positionsBySection }, now);
    return { ok: true as const, teamId, personId, eventId, warnings: read.warnings };
  });
}

async function found(
  tx: TeamTx,
  { name, personName, userId, now }: { name: string; personName: string; userId: string; now: number },
): Promise<string> {
  const personId = randomUUID();
  await createTeamRow(tx, name, now);
  const member = {
    personId,
    membershipId: randomUUID(),
    userId,
    name: personName,
    role: 'admin' as const,
    eventId: null,
  };
  await createMember(tx, member, now);
  return personId;
}
