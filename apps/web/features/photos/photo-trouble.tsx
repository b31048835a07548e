import { Button } from '@/components/button';
import { Notice } from '@/components/notice';
import type { LoadedWork } from '../work/work-page';
import type { KeptPhoto } from './kept-photo';
import styles from './photos.module.css';
import { useFileAddress, usePhotos } from './use-photos';

/** Between keeping the picture and writing its entry is a moment; after that, none will come. */
const NO_ENTRY_AFTER_MILLIS = 10_000;
const NO_ENTRY =
  'Nothing in the log speaks of this photo: its entry was not taken, or the page was closed in between.';

/** Own photos that will not go by themselves: each with why, and what can be done. Nothing is thrown away unasked. */
export function PhotoTrouble({ work }: { work: LoadedWork }) {
  const me = work.replica.me.personId;
  const own = usePhotos(work.photos).filter(({ owner }) => owner === me);
  return own.map((photo) => {
    const why = photo.refused ?? (hasNoEntry(work, photo) ? NO_ENTRY : null);
    return why === null ? null : <StuckPhoto key={photo.photoId} work={work} photo={photo} why={why} />;
  });
}

function hasNoEntry({ state, waiting }: LoadedWork, { photoId, takenAt }: KeptPhoto): boolean {
  return waiting === 0 && !state.facts.has(photoId) && Date.now() - takenAt > NO_ENTRY_AFTER_MILLIS;
}

function StuckPhoto({ work, photo, why }: { work: LoadedWork; photo: KeptPhoto; why: string }) {
  const address = useFileAddress(photo.file);
  return (
    <Notice kind="warning" title="A photo was not taken" spoken>
      <p>{why}</p>
      {/* biome-ignore lint/performance/noImgElement: it is on this phone */}
      {address ? <img className={styles.stuck} src={address} alt="As it was taken" /> : null}
      <div className={styles.choices}>
        {photo.refused === null ? null : (
          <Button onClick={() => void work.photos.sendAgain(photo)}>Send it again</Button>
        )}
        <Button look="quiet" onClick={() => void work.photos.drop(photo)}>
          Throw it away
        </Button>
      </div>
    </Notice>
  );
}
