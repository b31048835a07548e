import type { VisitProposal, VisitQuestion } from '@halfshaft/bayplan';
import type { proposeInput } from '@halfshaft/contract';
import { servicesOf } from '@halfshaft/itinerary';
import type { MemberTx, Store } from '@halfshaft/store';
import type { z } from 'zod';
import { unknown } from '../../errors';
import { maySeeEvent } from '../people/ability';
import { findItinerary, inTeam, listEntries, listPeople } from './data';

/** Makes plans away from the requests, one after the other. */
export interface Planner {
  /**
   * @param key whose plan: of one service of one car at most one is made at a time, and who asks the same waits for it too
   * @param signal once everyone who waited has gone, the plan is given up
   * @throws AppError when too many plans wait already
   */
  propose(key: string, question: VisitQuestion, signal?: AbortSignal): Promise<VisitProposal>;
}

type Asked = z.infer<typeof proposeInput> & { userId: string };

/** One proposal; nobody is moved by it. Loads inside the team's fence and plans outside. */
export async function propose(
  { store, planner }: { store: Store; planner: Planner },
  asked: Asked,
  signal: AbortSignal | undefined,
): Promise<VisitProposal> {
  const { teamId, entryId, serviceId } = asked;
  const question = await inTeam(store, asked, (tx) => loadQuestion(tx, asked));
  return planner.propose(`${teamId} ${entryId} ${serviceId}`, question, signal);
}

async function loadQuestion(tx: MemberTx, asked: Asked): Promise<VisitQuestion> {
  const { eventId, entryId, serviceId, workSeconds, personIds } = asked;
  const version = maySeeEvent(tx.member, eventId) ? await findItinerary(tx, eventId) : null;
  const service = version && servicesOf(version.itinerary).find(({ id }) => id === serviceId);
  const entry = (await listEntries(tx, eventId)).find((each) => each.entryId === entryId);
  if (!service || !entry) throw unknown();
  const known = new Set((await listPeople(tx)).map(({ personId }) => personId));
  if (!personIds.every((personId) => known.has(personId))) throw unknown();
  const work = asked.work.map(({ cardId, mustDo }) => {
    const card = entry.cards.find(({ id }) => id === cardId);
    if (!card) throw unknown();
    const { id, name, starterId, place, seconds, people, tools } = card;
    return { card: { id, name, starterId, place, seconds, people, tools }, mustDo };
  });
  return { workSeconds, isRemote: service.kind === 'remoteService', people: personIds, work };
}
