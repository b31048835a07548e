'use client';

import { Button } from '@/components/button';
import { useNow } from '@/lib/use-now';
import { sentenceOf } from '../work/entry-sentence';
import { entryNamesOf } from '../work/names';
import { WorkNotices } from '../work/work-notices';
import type { LoadedWork } from '../work/work-page';
import { WorkTrouble } from '../work/work-trouble';
import styles from './bay.module.css';
import { lastUndoable } from './last-undoable';

/** Stays at the lower edge, under the thumb: what was refused, and the way back from a slip. */
export function BayDock({ work }: { work: LoadedWork }) {
  const now = useNow();
  const { replica, state, entries, deviceId } = work;
  const last = now === null ? null : lastUndoable(entries, state, deviceId, now * 1000);
  const names = entryNamesOf(replica, state);
  return (
    <div className={styles.dock}>
      <WorkTrouble work={work} />
      <WorkNotices work={work} />
      {last ? (
        <div className={styles.undo}>
          <p>{sentenceOf({ ...last, flags: [] }, names)}</p>
          <Button onClick={() => work.act('undo', { actionId: last.actionId }, replica.me.personId)}>
            Undo
          </Button>
        </div>
      ) : null}
    </div>
  );
}
