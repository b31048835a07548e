import { type PhotoSize, photoAddress } from '@halfshaft/contract';
import { useEffect, useState } from 'react';
import { useOnline } from '@/lib/use-online';
import { pauseMillis } from '../work/backoff';
import type { KeptPhoto } from './kept-photo';
import styles from './photos.module.css';
import { useFileAddress } from './use-photos';

const FIRST_LOOK_MILLIS = 5000;
const LONGEST_LOOK_MILLIS = 10 * 60_000;

interface PictureProps {
  teamId: string;
  photoId: string;
  /** While this phone still has it to send. */
  kept: KeptPhoto | undefined;
  takenBy: string;
  words: string;
  size: PhotoSize;
}

/** A photo from this phone while it waits here, else from the server; until it is there, words in its place. */
export function Picture({ teamId, photoId, kept, takenBy, words, size }: PictureProps) {
  const here = useFileAddress(kept?.file);
  const { isMissing, attempt, onMissing } = useLookAgain();
  // The number makes the browser ask again; the answer of the first time it was there is kept.
  const there = photoAddress(teamId, photoId, size) + (attempt > 0 ? `&attempt=${attempt}` : '');
  const address = kept ? here : there;
  if (!kept && isMissing) {
    return (
      <span className={styles.missing}>
        Not here yet: it is on the phone of {takenBy}, or you are offline.
      </span>
    );
  }
  return (
    <>
      {address ? (
        // biome-ignore lint/performance/noImgElement: pages are static and pictures come in the size they are shown
        <img
          className={size === 'full' ? styles.full : undefined}
          src={address}
          alt={`Photo: ${words}`}
          onError={onMissing}
        />
      ) : null}
      {kept ? (
        <span className={styles.waits}>{kept.refused === null ? 'Waits to be sent' : 'Not taken'}</span>
      ) : null}
    </>
  );
}

/** A picture that is not there may still come from the phone that took it: tonight, or never. */
function useLookAgain() {
  const online = useOnline();
  const [attempt, setAttempt] = useState(0);
  const [misses, setMisses] = useState(0);
  const [isMissing, setMissing] = useState(false);
  useEffect(() => {
    if (online) setMisses(0);
  }, [online]);
  useEffect(() => {
    if (!isMissing) return;
    const timer = setTimeout(
      () => {
        setAttempt((before) => before + 1);
        setMisses((before) => before + 1);
        setMissing(false);
      },
      pauseMillis(misses, FIRST_LOOK_MILLIS, LONGEST_LOOK_MILLIS),
    );
    return () => clearTimeout(timer);
  }, [isMissing, misses]);
  return { isMissing, attempt, onMissing: () => setMissing(true) };
}
