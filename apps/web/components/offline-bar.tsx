'use client';

import { useOnline } from '@/lib/use-online';
import styles from './offline-bar.module.css';

export type ConnectionStatus = 'connected' | 'sending' | 'cutOff';

export interface OfflineBarProps {
  /** What the caller knows better than the browser does; left away, the browser's word is taken. */
  status?: ConnectionStatus;
  /** How many entries wait on this device. */
  waiting?: number;
  /** Whole sentences that are to be said beside it. */
  notes?: readonly string[];
}

/** A bar that is only there when something has to be said about the connection. */
export function OfflineBar({ status, waiting = 0, notes = [] }: OfflineBarProps) {
  const online = useOnline();
  const sentence = describeConnection(status ?? (online ? 'connected' : 'cutOff'), waiting);
  return (
    <div role="status" aria-live="polite">
      {sentence === null ? null : <p className={styles.bar}>{sentence}</p>}
      {notes.map((note) => (
        <p key={note} className={styles.bar}>
          {note}
        </p>
      ))}
    </div>
  );
}

function describeConnection(status: ConnectionStatus, waiting: number): string | null {
  const entries = waiting === 1 ? '1 entry' : `${waiting} entries`;
  if (status === 'cutOff') {
    return waiting === 0
      ? 'No connection. What you see may be out of date, and nothing can be sent until it is back.'
      : `No connection. ${entries} kept on this phone, sent when it is back.`;
  }
  return waiting === 0 ? null : `Sending ${entries} …`;
}
