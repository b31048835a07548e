'use client';

import { PhotoTrouble } from '../photos/photo-trouble';
import { WorkNotices } from '../work/work-notices';
import type { LoadedWork } from '../work/work-page';
import { WorkTrouble } from '../work/work-trouble';
import styles from './bay.module.css';
import { UndoLast } from './undo-last';

/** Stays at the lower edge, under the thumb: what was refused, and the way back from a slip. */
export function BayDock({ work }: { work: LoadedWork }) {
  return (
    <div className={styles.dock}>
      <WorkTrouble work={work} />
      <WorkNotices work={work} />
      <PhotoTrouble work={work} />
      <UndoLast work={work} />
    </div>
  );
}
