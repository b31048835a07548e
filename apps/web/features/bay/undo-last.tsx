'use client';

import { Button } from '@/components/button';
import { useNow } from '@/lib/use-now';
import { sentenceOf } from '../work/entry-sentence';
import { entryNamesOf } from '../work/names';
import type { LoadedWork } from '../work/work-page';
import styles from './bay.module.css';
import { lastUndoable } from './last-undoable';

/** The newest thing this phone did, and the way back from it as long as it can be taken back at once. */
export function UndoLast({ work }: { work: LoadedWork }) {
  const now = useNow();
  const { replica, state, entries, deviceId } = work;
  const last = now === null ? null : lastUndoable(entries, state, deviceId, now * 1000);
  if (!last) return null;
  return (
    <div className={styles.undo}>
      <p>{sentenceOf({ ...last, flags: [] }, entryNamesOf(replica, state))}</p>
      <Button onClick={() => work.act('undo', { actionId: last.actionId }, replica.me.personId)}>Undo</Button>
    </div>
  );
}
