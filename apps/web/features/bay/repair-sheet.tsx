import { type PersonId, repairsOf } from '@halfshaft/worklog';
import { Button } from '@/components/button';
import { Sheet } from '@/components/sheet';
import type { Visit } from '../service/visit';
import { entryNamesOf } from '../work/names';
import { newId } from '../work/new-id';
import type { LoadedWork } from '../work/work-page';
import styles from './bay.module.css';

interface RepairSheetProps {
  work: LoadedWork;
  visit: Visit;
  by: PersonId;
}

/** Temporary repairs on the car, each looked at anew at every service until it is made good. None: nothing is shown. */
export function RepairSheet({ work, visit, by }: RepairSheetProps) {
  const { replica, state } = work;
  const { entry, service } = visit;
  const repairs = repairsOf(state, entry.entryId);
  const names = entryNamesOf(replica, state);
  if (repairs.length === 0) return null;
  const makeGood = (of: string) =>
    work.act(
      'recordFact',
      {
        factId: newId(),
        entryId: entry.entryId,
        at: { kind: 'service', serviceId: service.id },
        fact: { kind: 'madeGood', of, words: '' },
      },
      by,
    );
  return (
    <Sheet title="Temporary repairs">
      <p>Look at each at every service until a lasting repair is made.</p>
      <ul className={styles.list}>
        {repairs.map(({ task, words }) => (
          <li key={task.id} className={styles.task}>
            <h3 className={styles.name}>{names.task(task.ref)}</h3>
            <p className={styles.facts}>
              {[`made at ${names.service(task.ref.serviceId)}`, words].filter(Boolean).join(' · ')}
            </p>
            <div className={`${styles.buttons} screen-only`}>
              <Button onClick={() => makeGood(task.id)}>Made good</Button>
            </div>
          </li>
        ))}
      </ul>
    </Sheet>
  );
}
