import { CARRY_VERSION, type CarriedEvent, type CarriedHead, carriedHead } from '@halfshaft/contract';
import type { MemberTx, TeamTx } from '@halfshaft/store';
import type { LogEntry } from '@halfshaft/worklog';
import { notAllowed, unknown } from '../../errors';
import { mayManage } from '../people/ability';
import {
  findEvent,
  findOrigin,
  findTeamName,
  listLogEntries,
  listPictures,
  loadActions,
  loadHeadRows,
  loadSeen,
} from './data';

/** Everything that another server needs to go on with the event, for a manager of the team. */
export async function takeAlong(tx: MemberTx, eventId: string, now: number): Promise<CarriedEvent> {
  if (!mayManage(tx.member)) throw notAllowed('a manager');
  const log = await readLog(tx, eventId);
  const actions = await loadActions(tx, eventId, log);
  return { head: await readHead(tx, eventId, { madeBy: tx.member.personId, madeAt: now }), actions };
}

/** The event as a file has it, apart from the log. */
export async function readHead(
  tx: TeamTx,
  eventId: string,
  made: { madeBy: string; madeAt: number },
): Promise<CarriedHead> {
  const event = await findEvent(tx, eventId);
  if (!event) throw unknown();
  const { name, clockOffsetSeconds, penaltyRules, plannedConditions, tyreAllowance } = event;
  const settings = { penaltyRules, plannedConditions, tyreAllowance };
  // Parsed here too, so that both servers make the same check sums of it.
  return carriedHead.parse({
    version: CARRY_VERSION,
    ...made,
    team: { teamId: tx.teamId, name: await findTeamName(tx) },
    event: { eventId, name, clockOffsetSeconds, from: await findOrigin(tx, eventId), settings },
    seen: await loadSeen(tx),
    pictures: await listPictures(tx, eventId),
    ...(await loadHeadRows(tx, eventId)),
  });
}

async function readLog(tx: TeamTx, eventId: string): Promise<LogEntry[]> {
  const log: LogEntry[] = [];
  for (;;) {
    const page = await listLogEntries(tx, eventId, log.length);
    if (page.length === 0) return log;
    log.push(...page);
  }
}
