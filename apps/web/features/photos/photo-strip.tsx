import type { Photo } from '@halfshaft/worklog';
import { useState } from 'react';
import { entryNamesOf, nameOf } from '../work/names';
import type { LoadedWork } from '../work/work-page';
import { captionOf } from './caption-of';
import { PhotoDialog } from './photo-dialog';
import styles from './photos.module.css';
import { Picture } from './picture';
import { usePhotos } from './use-photos';

/** Small pictures in a row; a tap shows one large. None: nothing is shown. */
export function PhotoStrip({ work, photos }: { work: LoadedWork; photos: readonly Photo[] }) {
  const [open, setOpen] = useState<string | null>(null);
  const kept = usePhotos(work.photos);
  const shown = photos.find((photo) => photo.factId === open);
  if (photos.length === 0) return null;
  const names = entryNamesOf(work.replica, work.state);
  return (
    <>
      <ul className={styles.strip} aria-label="Photos">
        {photos.map((photo) => (
          <li key={photo.factId}>
            <button type="button" className={styles.small} onClick={() => setOpen(photo.factId)}>
              <Picture
                teamId={work.teamId}
                photoId={photo.factId}
                kept={kept.find(({ photoId }) => photoId === photo.factId)}
                takenBy={nameOf(work.replica, photo.recordedBy)}
                words={captionOf(photo, names)}
                size="small"
              />
            </button>
          </li>
        ))}
      </ul>
      {shown ? <PhotoDialog work={work} photo={shown} onClose={() => setOpen(null)} /> : null}
    </>
  );
}
