import { Button } from '@/components/button';
import { VisuallyHidden } from '@/components/visually-hidden';
import styles from './bay.module.css';
import type { PadKey } from './press-key';

const DIGITS: readonly PadKey[] = ['1', '2', '3', '4', '5', '6', '7', '8', '9'];

export interface NumberPadProps {
  /** The box it types into. */
  label: string;
  withPoint: boolean;
  onKey: (key: PadKey) => void;
  /** Null when the lit box is the last one. */
  onNext: (() => void) | null;
}

/** Large keys for gloves. */
export function NumberPad({ label, withPoint, onKey, onNext }: NumberPadProps) {
  return (
    <fieldset className={styles.pad}>
      <legend className={styles.padLegend}>{label}</legend>
      {DIGITS.map((digit) => (
        <Button key={digit} className={styles.key} onClick={() => onKey(digit)}>
          {digit}
        </Button>
      ))}
      <Button className={styles.key} disabled={!withPoint} onClick={() => onKey('.')}>
        <span aria-hidden="true">.</span>
        <VisuallyHidden>point</VisuallyHidden>
      </Button>
      <Button className={styles.key} onClick={() => onKey('0')}>
        0
      </Button>
      <Button className={styles.key} onClick={() => onKey('back')}>
        <span aria-hidden="true">←</span>
        <VisuallyHidden>delete the last figure</VisuallyHidden>
      </Button>
      {onNext ? (
        <Button className={styles.next} onClick={onNext}>
          Next
        </Button>
      ) : null}
    </fieldset>
  );
}
