'use client';

import { type ReactNode, useEffect, useId, useRef } from 'react';
import { Button } from './button';
import styles from './dialog.module.css';

export interface DialogProps {
  open: boolean;
  /** Called for the close button, the Escape key and the phone's back gesture alike. */
  onClose: () => void;
  title: string;
  children: ReactNode;
  /** Buttons at the foot; the last one is the one that goes on. */
  actions?: ReactNode;
  closeWords?: string;
}

/** The browser's own dialog: it keeps the focus inside and gives it back afterwards. */
export function Dialog({ open, onClose, title, children, actions, closeWords = 'Close' }: DialogProps) {
  const element = useRef<HTMLDialogElement>(null);
  const titleId = useId();

  useEffect(() => {
    const dialog = element.current;
    if (dialog === null || dialog.open === open) return;
    if (open) dialog.showModal();
    else dialog.close();
  }, [open]);

  return (
    <dialog className={styles.dialog} ref={element} onClose={onClose} aria-labelledby={titleId}>
      <h2 className={styles.title} id={titleId}>
        {title}
      </h2>
      <div className={styles.body}>{children}</div>
      <div className={styles.actions}>
        <Button look="quiet" onClick={() => element.current?.close()}>
          {closeWords}
        </Button>
        {actions}
      </div>
    </dialog>
  );
}
