import { PaperTask } from './paper-task';
import styles from './service-paper.module.css';
import type { Share } from './share-out';
import type { SheetTask } from './sheet';
import { minutesOfTime, minutesOfWork } from './time-in-words';

interface PersonListProps {
  /** From 1. */
  number: number;
  shares: readonly Share<SheetTask>[];
  clockSeconds: number;
}

/** What one person does, do now first. */
export function PersonList({ number, shares, clockSeconds }: PersonListProps) {
  const share = shares[number - 1];
  if (!share) return null;
  const groups = [
    { title: 'Do now', tasks: share.work.filter((task) => task.mustDo) },
    { title: 'If time', tasks: share.work.filter((task) => !task.mustDo) },
  ].filter((group) => group.tasks.length > 0);
  return (
    <section className={styles.person} aria-label={`Person ${number}`}>
      <h4 className={styles.name}>
        <span>Person {number}</span>
        <span className={styles.blank} />
        <span className={styles.sum}>
          {minutesOfWork(share.seconds)} of {minutesOfTime(clockSeconds)} min
        </span>
      </h4>
      {groups.length === 0 ? <p>Nothing left for this person: pass tools, watch the clock.</p> : null}
      {groups.map((group) => (
        <div key={group.title} className={styles.group}>
          <h5 className={styles.when}>{group.title}</h5>
          {group.tasks.map((task) => {
            const partners = partnersOf(task, number, shares);
            const isFirst = partners.every((partner) => partner > number);
            return <PaperTask key={task.card.id} task={task} partners={partners} isFirst={isFirst} />;
          })}
        </div>
      ))}
    </section>
  );
}

function partnersOf(task: SheetTask, number: number, shares: readonly Share<SheetTask>[]): number[] {
  return shares.flatMap((share, index) =>
    index + 1 !== number && share.work.includes(task) ? [index + 1] : [],
  );
}
