import { combinedReasonInWords, type ReasonNames } from '@halfshaft/lifing';
import { capitalise } from '@/lib/capitalise';
import { CAR_PLACE_NAMES } from '../car-plan/car-places';
import { cardTitle } from '../cards/card-title';
import { StateMark } from '../task/state-mark';
import { nameOf } from '../work/names';
import { findingInWords, taskInWords } from '../work/task-in-words';
import type { LoadedWork } from '../work/work-page';
import type { JudgedCard } from './judge-visit';
import styles from './service.module.css';
import { reasonNamesOf } from './time-in-words';
import type { Visit } from './visit';

export interface CardListProps {
  cards: readonly JudgedCard[];
  work: LoadedWork;
  visit: Visit;
  /** Said when there are none. */
  empty: string;
}

export function CardList({ cards, work, visit, empty }: CardListProps) {
  if (cards.length === 0) return <p>{empty}</p>;
  return (
    <ul className={styles.list}>
      {cards.map((each) => (
        <CardLine key={each.card.id} each={each} work={work} visit={visit} />
      ))}
    </ul>
  );
}

function CardLine({ each, work, visit }: { each: JudgedCard; work: LoadedWork; visit: Visit }) {
  const { card, judged, task } = each;
  const names = reasonNamesOf(work.replica, visit.inAt);
  const words = {
    nameOf: (id: string) => nameOf(work.replica, id),
    me: work.replica.me.personId,
    confirmedSeq: work.confirmedSeq,
  };
  return (
    <li className={styles.line}>
      <h3 className={styles.name}>
        <StateMark state={judged.verdict} words={cardTitle(card)} />
      </h3>
      <p className={styles.facts}>{cardFacts(card)}</p>
      {reasonsInWords(judged, names).map((sentence) => (
        <p key={sentence}>{sentence}.</p>
      ))}
      {judged.overdue ? <p className={styles.statement}>Overdue.</p> : null}
      {card.caution ? (
        <p>
          <strong>Take care: </strong>
          {card.caution}
        </p>
      ) : null}
      <p>
        <StateMark state={task.state} words={taskInWords(task, words)} />
      </p>
      {task.findings.map((finding, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: findings are only ever added, and may be alike
        <p key={index}>Found: {findingInWords(finding, card.looks)}.</p>
      ))}
    </li>
  );
}

function cardFacts({ seconds, people, place, needsSignature }: JudgedCard['card']): string {
  const minutes = `${Math.ceil(seconds / 60)} min`;
  const parts = [people > 1 ? `${minutes} × ${people} people` : minutes, CAR_PLACE_NAMES[place]];
  return [...parts, needsSignature ? 'a second person signs' : ''].filter(Boolean).join(' · ');
}

/** What a card's limits say is dropped where they say it could wait, and what happened or was read asks for it now. */
function reasonsInWords({ verdict, reasons }: JudgedCard['judged'], names: ReasonNames): string[] {
  const isCalled = verdict !== 'leave' && reasons.some(asksBesideLimits);
  const told = reasons.filter(({ reason }) => !isCalled || !SAYS_IT_CAN_WAIT.has(reason.code));
  return [...new Set(told.map((reason) => capitalise(combinedReasonInWords(reason, names))))];
}

function asksBesideLimits({ source, reason }: JudgedCard['judged']['reasons'][number]): boolean {
  return source === 'trigger' || (source === 'reading' && !ASKS_FOR_NOTHING.has(reason.code));
}

const ASKS_FOR_NOTHING: ReadonlySet<string> = new Set(['holds', 'notKnown', 'notHere']);
const SAYS_IT_CAN_WAIT: ReadonlySet<string> = new Set(['reaches', 'lasts']);
