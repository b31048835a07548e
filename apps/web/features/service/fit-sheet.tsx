import { neededPersonSeconds } from '@halfshaft/lifing';
import { Sheet } from '@/components/sheet';
import { fitInWords } from './fit-in-words';
import type { JudgedCard } from './judge-visit';
import styles from './service.module.css';
import type { Visit } from './visit';

const SECONDS_IN_MINUTE = 60;

interface FitSheetProps {
  visit: Visit;
  /** The working time as it now is. */
  allowedSeconds: number;
  doNow: readonly JudgedCard[];
}

/** Whether what must be done fits, in words, and how much of it is left. */
export function FitSheet({ visit, allowedSeconds, doNow }: FitSheetProps) {
  const [amounts, statement, ...warnings] = fitInWords({
    cards: doNow.map(({ card }) => card),
    allowedSeconds,
    people: visit.entry.people,
  });
  const left = doNow.filter(({ task }) => !['done', 'notNeeded', 'carriedOver'].includes(task.state));
  const minutesLeft = Math.ceil(neededPersonSeconds(left.map(({ card }) => card)) / SECONDS_IN_MINUTE);
  return (
    <Sheet title="Does it fit?">
      <p>{amounts}</p>
      <p className={styles.statement}>{statement}</p>
      {warnings.map((warning) => (
        <p key={warning}>{warning}</p>
      ))}
      {left.length < doNow.length ? (
        <p>
          {doNow.length - left.length} of {doNow.length} closed, {minutesLeft} person-minutes to go.
        </p>
      ) : null}
    </Sheet>
  );
}
