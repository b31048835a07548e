import { useState } from 'react';
import { type ButtonLook, buttonClass } from '@/components/button';
import { classNames } from '@/lib/class-names';
import styles from './photos.module.css';
import { shrinkPhoto } from './shrink-photo';

export interface PhotoButtonProps {
  /** What it is of, for a screen reader: "Take a photo of …". */
  of: string;
  /** A sentence when something stands against it. */
  onTake: (file: Uint8Array<ArrayBuffer>) => Promise<string | null>;
}

/** One tap opens the camera, or what was taken before; where there is no camera, both open the files. */
export function PhotoButton({ of, onTake }: PhotoButtonProps) {
  const [busy, setBusy] = useState(false);
  const [problem, setProblem] = useState<string | null>(null);

  async function take(picked: File) {
    setBusy(true);
    const shrunk = await shrinkPhoto(picked);
    setProblem(shrunk.ok ? await onTake(shrunk.file) : shrunk.sentence);
    setBusy(false);
  }

  const pick = { busy, onPick: (picked: File) => void take(picked) };
  return (
    <>
      <PickButton {...pick} look="plain" capture="environment" label={`Take a photo of ${of}`}>
        {busy ? 'Making it small …' : 'Take a photo'}
      </PickButton>
      <PickButton {...pick} look="quiet" label={`Choose one: a photo of ${of}`}>
        Choose one
      </PickButton>
      {problem === null ? null : (
        <p className={styles.problem} role="alert">
          {problem}
        </p>
      )}
    </>
  );
}

interface PickButtonProps {
  look: ButtonLook;
  /** Given, a phone opens this camera at once and shows no earlier pictures. */
  capture?: 'environment';
  label: string;
  busy: boolean;
  onPick: (picked: File) => void;
  children: string;
}

function PickButton({ look, capture, label, busy, onPick, children }: PickButtonProps) {
  return (
    <label className={classNames(buttonClass(look, false), styles.button)}>
      {children}
      <input
        className={styles.input}
        type="file"
        accept="image/*"
        capture={capture}
        aria-label={label}
        disabled={busy}
        onChange={({ target }) => {
          const [picked] = target.files ?? [];
          if (picked) onPick(picked);
          target.value = '';
        }}
      />
    </label>
  );
}
