import type { ReactNode } from 'react';
import { Button } from '@/components/button';
import { Dialog } from '@/components/dialog';

export interface RecordingDialogProps {
  title: string;
  onClose: () => void;
  closeWords?: string;
  /** The button that writes it down; none where what is in the dialog writes, or nothing can be written. */
  goOn?: { words: string; act: () => void } | null;
  children: ReactNode;
}

/** A dialog that writes one thing into the log: there only while it is open, and what was typed is kept without it. */
export function RecordingDialog({
  title,
  onClose,
  closeWords = 'Not yet',
  goOn = null,
  children,
}: RecordingDialogProps) {
  const button = goOn ? (
    <Button look="main" onClick={goOn.act}>
      {goOn.words}
    </Button>
  ) : null;
  return (
    <Dialog open onClose={onClose} title={title} closeWords={closeWords} actions={button}>
      {children}
    </Dialog>
  );
}
