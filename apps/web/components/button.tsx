import type { ComponentProps } from 'react';
import { classNames } from '@/lib/class-names';
import styles from './button.module.css';

export type ButtonLook = 'main' | 'plain' | 'quiet';

export interface ButtonProps extends ComponentProps<'button'> {
  /** One `main` button on a screen; `quiet` for what is seldom wanted. */
  look?: ButtonLook;
  /** Fills the width, for thumbs. */
  wide?: boolean;
  /** While true a press does nothing, and the words tell what is going on. */
  busy?: boolean;
  busyWords?: string;
}

export function Button(props: ButtonProps) {
  const {
    look = 'plain',
    wide = false,
    busy = false,
    busyWords,
    className,
    children,
    onClick,
    ...rest
  } = props;
  return (
    <button
      type="button"
      {...rest}
      // Not `disabled`, which would drop the keyboard's focus in the middle of saving.
      aria-disabled={busy || undefined}
      className={classNames(buttonClass(look, wide), className)}
      onClick={busy ? (event) => event.preventDefault() : onClick}
    >
      {busy && busyWords ? busyWords : children}
    </button>
  );
}

export function buttonClass(look: ButtonLook, wide: boolean): string {
  return classNames(styles.button, styles[look], wide && styles.wide);
}
