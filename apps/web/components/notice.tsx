import type { ReactNode } from 'react';
import { classNames } from '@/lib/class-names';
import styles from './notice.module.css';
import { NoteShape, ProblemShape, WarningShape } from './shapes';

export type NoticeKind = 'info' | 'warning' | 'problem';

const WORDS: Record<NoticeKind, string> = { info: 'Note', warning: 'Take care', problem: 'Problem' };

export interface NoticeProps {
  kind?: NoticeKind;
  /** Instead of "Note", "Take care", "Problem". */
  title?: string;
  /** True when it appears while the page is in use: it is then read out at once. */
  spoken?: boolean;
  children: ReactNode;
}

/** Told apart by word and shape: an outlined note, a half-filled triangle, a filled plate. */
export function Notice({ kind = 'info', title = WORDS[kind], spoken = false, children }: NoticeProps) {
  return (
    <div className={classNames(styles.notice, styles[kind])} role={spoken ? 'alert' : undefined}>
      <p className={styles.title}>
        {kind === 'info' ? <NoteShape /> : null}
        {kind === 'warning' ? <WarningShape /> : null}
        {kind === 'problem' ? <ProblemShape /> : null}
        {title}
      </p>
      <div className={styles.body}>{children}</div>
    </div>
  );
}
