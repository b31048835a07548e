import { type CardId, type PersonId, photosOf } from '@halfshaft/worklog';
import { Button } from '@/components/button';
import { Disclosure } from '@/components/disclosure';
import { PhotoStrip } from '../photos/photo-strip';
import { TaskPhotoButton } from '../photos/task-photo-button';
import { StateMark } from '../task/state-mark';
import { doerOf } from '../work/decide-locally';
import { nameOf } from '../work/names';
import { readingsInWords } from '../work/reading-in-words';
import { findingInWords, taskInWords } from '../work/task-in-words';
import type { LoadedWork } from '../work/work-page';
import styles from './bay.module.css';
import type { BayTask } from './bay-task';
import { isBegun } from './is-begun';
import { offersFor, type TaskOffer } from './offers-for';
import type { OpenDialog } from './open-dialog';

export interface TaskCardProps {
  bayTask: BayTask;
  work: LoadedWork;
  by: PersonId;
  /** Cards whose parts may have been changed on the road. */
  newParts: ReadonlySet<CardId>;
  onOpen: (dialog: OpenDialog) => void;
}

/** One round, job or snag: what, why, what has become of it, and the taps for it. */
export function TaskCard(props: TaskCardProps) {
  const { bayTask, work } = props;
  const { task, title, facts, why, said, caution, instruction, looks, readings } = bayTask;
  const me = work.replica.me.personId;
  const words = { nameOf: (id: PersonId) => nameOf(work.replica, id), me, confirmedSeq: work.confirmedSeq };
  const measured = readingsInWords(readings, task.readings);
  return (
    <li className={styles.task}>
      <h3 className={styles.name}>{title}</h3>
      <p className={styles.facts}>{why === '' ? facts : `${facts} · ${why}`}</p>
      {said.map((sentence) => (
        <p key={sentence} className={styles.facts}>
          {sentence}
        </p>
      ))}
      <p className={styles.state} aria-live="polite">
        <StateMark state={task.state} words={taskInWords(task, words)} />
      </p>
      {caution ? (
        <p>
          <strong>Take care: </strong>
          {caution}
        </p>
      ) : null}
      {looks.length > 0 || instruction ? (
        <Disclosure summary={looks.length > 0 ? `What to look at (${looks.length})` : 'How'}>
          {instruction ? <p>{instruction}</p> : null}
          <ul className={styles.checks}>
            {looks.map((look) => (
              <li key={look.id}>{look.words}</li>
            ))}
          </ul>
        </Disclosure>
      ) : null}
      {task.findings.map((finding, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: findings are only ever added, and may be alike
        <p key={index}>Found: {findingInWords(finding, looks)}.</p>
      ))}
      {measured ? <p>Measured: {measured}.</p> : null}
      <PhotoStrip work={work} photos={photosOf(work.state, task.ref)} />
      {task.state !== 'done' && isBegun(task.id) ? (
        <p className={styles.begun}>You began to fill this in. It is kept until you press Done.</p>
      ) : null}
      <TaskButtons {...props} />
    </li>
  );
}

function TaskButtons({ bayTask, work, by, newParts, onOpen }: TaskCardProps) {
  const { task, title, readings } = bayTask;
  const me = work.replica.me.personId;
  const { mayManage } = doerOf(work.replica, by);
  const ref = { task: task.ref };
  const needsSheet = readings.some((reading) => reading.required) || isBegun(task.id);

  function press(offer: TaskOffer) {
    switch (offer) {
      case 'take':
        return void work.act('takeTask', ref, by);
      case 'release':
        return void work.act('releaseTask', ref, by);
      case 'sign':
        return void work.act('signTask', ref, me);
      case 'done':
        if (needsSheet) return onOpen({ kind: 'close', taskId: task.id, step: 'sheet' });
        return void work.act('closeTask', { ...ref, findings: [], readings: [] }, by);
      case 'problem':
        return onOpen({ kind: 'close', taskId: task.id, step: 'finding' });
      case 'leave':
      case 'reopen':
      case 'signHere':
        return onOpen({ kind: offer, taskId: task.id });
    }
  }

  const offers = offersFor(task, { by, me, mayManage });
  const { source } = task.ref;
  const mine = task.holder === by;
  const canMeasure = offers.includes('done') && readings.length > 0 && !needsSheet;
  return (
    <div className={styles.buttons}>
      {offers.map((offer) => (
        <Button
          key={offer}
          look={(offer === 'done' && mine) || offer === 'sign' ? 'main' : isSeldom(offer) ? 'quiet' : 'plain'}
          onClick={() => press(offer)}
        >
          {offerWords(offer, mine)}
        </Button>
      ))}
      <TaskPhotoButton work={work} by={by} task={task.ref} title={title} />
      {canMeasure ? (
        <Button look="quiet" onClick={() => onOpen({ kind: 'close', taskId: task.id, step: 'sheet' })}>
          Readings
        </Button>
      ) : null}
      {source.kind === 'card' && newParts.has(source.cardId) ? (
        <Button look="quiet" onClick={() => onOpen({ kind: 'fitted', cardId: source.cardId })}>
          Changed on the road
        </Button>
      ) : null}
    </div>
  );
}

function isSeldom(offer: TaskOffer): boolean {
  return offer === 'leave' || offer === 'release' || offer === 'reopen';
}

function offerWords(offer: TaskOffer, mine: boolean): string {
  switch (offer) {
    case 'take':
      return "I've got it";
    case 'done':
      return 'Done';
    case 'problem':
      return "Something's wrong";
    case 'leave':
      return "Can't do it";
    case 'release':
      return mine ? 'Let it go' : 'Free it';
    case 'sign':
      return 'Sign: I checked it';
    case 'signHere':
      return 'Another signs here';
    case 'reopen':
      return 'Open again';
  }
}
