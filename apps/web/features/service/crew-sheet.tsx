import { useMemo, useState } from 'react';
import { Button } from '@/components/button';
import { Sheet } from '@/components/sheet';
import { Stack } from '@/components/stack';
import { capitalise } from '@/lib/capitalise';
import { FittedDialog } from '../bay/fitted-dialog';
import { UndoLast } from '../bay/undo-last';
import { CAR_PLACE_NAMES } from '../car-plan/car-places';
import { minutesOfWork } from '../visit/time-in-words';
import type { LoadedWork } from '../work/work-page';
import { crewJobsAfter } from './crew-jobs';
import { crewRepairsAfter } from './crew-repairs';
import styles from './service.module.css';
import { stagesAfter } from './stages-after';
import type { Visit } from './visit';

/** For the two of the crew, to take along on paper: what to look at at the first halt, and the tools it takes. */
export function CrewSheet({ work, visit }: { work: LoadedWork; visit: Visit }) {
  const { replica, state } = work;
  const jobs = useMemo(() => crewJobsAfter(replica, state, visit), [replica, state, visit]);
  const repairs = useMemo(() => crewRepairsAfter(replica, state, visit), [replica, state, visit]);
  if (jobs === null) return null;
  return (
    <Sheet title="For the crew, at the first halt">
      {jobs.length + repairs.length === 0 ? <p>Nothing asks for a look on the road so far.</p> : null}
      <ul className={styles.list}>
        {repairs.map(({ taskId, title, why }) => (
          <li key={taskId} className={styles.line}>
            <h3 className={styles.name}>{title}</h3>
            <p>{capitalise(why)}.</p>
            <p>Does it still hold? If not, stop where it is safe and tell the service crew.</p>
          </li>
        ))}
        {jobs.map(({ card, why }) => (
          <li key={card.id} className={styles.line}>
            <h3 className={styles.name}>{card.name}</h3>
            <p className={styles.facts}>
              {[`${minutesOfWork(card.seconds)} min`, CAR_PLACE_NAMES[card.place], ...why].join(' · ')}
            </p>
            {card.tools.length > 0 ? <p>Take along: {card.tools.join(', ')}.</p> : null}
            {card.instruction ? <p>{card.instruction}</p> : null}
            {card.caution ? (
              <p>
                <strong>Take care: </strong>
                {card.caution}
              </p>
            ) : null}
          </li>
        ))}
      </ul>
      <p className={styles.facts}>
        Where work outside service is allowed, and what, the event’s regulations say.
      </p>
      <ChangedOnTheRoad work={work} visit={visit} />
    </Sheet>
  );
}

/** What the crew changed after this service; the way back stands where it was written down. */
function ChangedOnTheRoad({ work, visit }: { work: LoadedWork; visit: Visit }) {
  const [open, setOpen] = useState(false);
  const close = () => setOpen(false);
  const by = work.replica.me.personId;
  return (
    <div className="screen-only">
      <Stack>
        <div>
          <Button onClick={() => setOpen(true)}>A part was changed on the road</Button>
        </div>
        <UndoLast work={work} />
      </Stack>
      {open ? (
        <FittedDialog
          {...{ work, visit, by }}
          cardId={null}
          stages={stagesAfter(visit, work.replica)}
          onClose={close}
        />
      ) : null}
    </div>
  );
}
