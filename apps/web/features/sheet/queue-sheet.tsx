import { Sheet } from '@/components/sheet';
import type { JudgedCard } from '../service/judge-visit';
import { QUEUE_QUESTIONS, queueLooks } from './queue-list';
import styles from './sheet.module.css';

/** What to ask and look at while the car waits outside the control. */
export function QueueSheet({ cards }: { cards: readonly JudgedCard[] }) {
  const looks = queueLooks(cards);
  return (
    <Sheet title="While it waits outside">
      <p>Ask and look only. Whether anything may be touched there, the event's regulations decide.</p>
      <h3>Ask the crew</h3>
      <ul className={styles.plain}>
        {QUEUE_QUESTIONS.map((question) => (
          <li key={question}>{question}</li>
        ))}
      </ul>
      {looks.length > 0 ? (
        <>
          <h3>Look, with all wheels on the ground</h3>
          <ul className={styles.plain}>
            {looks.map((each) => (
              <li key={each.name}>
                {each.name}
                {each.looks.length > 0 ? `: ${each.looks.join(', ')}` : ''}
              </li>
            ))}
          </ul>
        </>
      ) : null}
    </Sheet>
  );
}
