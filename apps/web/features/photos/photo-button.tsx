import { useState } from 'react';
import { buttonClass } from '@/components/button';
import { classNames } from '@/lib/class-names';
import styles from './photos.module.css';
import { shrinkPhoto } from './shrink-photo';

export interface PhotoButtonProps {
  /** What it is of, for a screen reader: "Photo of …". */
  of: string;
  /** A sentence when something stands against it. */
  onTake: (file: Uint8Array<ArrayBuffer>) => Promise<string | null>;
}

/** One tap opens the camera; where there is none, the files. */
export function PhotoButton({ of, onTake }: PhotoButtonProps) {
  const [busy, setBusy] = useState(false);
  const [problem, setProblem] = useState<string | null>(null);

  async function take(picked: File) {
    setBusy(true);
    const shrunk = await shrinkPhoto(picked);
    setProblem(shrunk.ok ? await onTake(shrunk.file) : shrunk.sentence);
    setBusy(false);
  }

  return (
    <>
      <label className={classNames(buttonClass('plain', false), styles.button)}>
        {busy ? 'Making it small …' : 'Photo'}
        <input
          className={styles.input}
          type="file"
          accept="image/*"
          capture="environment"
          aria-label={`Photo of ${of}`}
          disabled={busy}
          onChange={({ target }) => {
            const [picked] = target.files ?? [];
            if (picked) void take(picked);
            target.value = '';
          }}
        />
      </label>
      {problem === null ? null : (
        <p className={styles.problem} role="alert">
          {problem}
        </p>
      )}
    </>
  );
}
