import type { VisitQuestion } from '@halfshaft/bayplan';
import type { PersonId } from '@halfshaft/worklog';
import type { JudgedCard } from '../service/judge-visit';
import type { Visit } from '../service/visit';

/**
 * What a plan of one service is made from: what is due there, done meanwhile or not, so that a sheet printed before and a
 * screen opened after have the same plan.
 */
export function questionOf(
  judged: readonly JudgedCard[],
  { service }: Pick<Visit, 'service'>,
  workSeconds: number,
  people: readonly PersonId[],
): VisitQuestion {
  const due = judged.filter((each) => each.judged.verdict !== 'leave');
  return {
    workSeconds: Math.max(0, workSeconds),
    isRemote: service.kind === 'remoteService',
    people,
    work: due.map(({ card, judged: { verdict } }) => {
      const { id, name, starterId, place, seconds, people: wanted, tools } = card;
      return {
        card: { id, name, starterId, place, seconds, people: wanted, tools },
        mustDo: verdict === 'doNow',
      };
    }),
  };
}
