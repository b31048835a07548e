import type { Finding } from '@halfshaft/worklog';
import { Button } from '@/components/button';
import { findingInWords } from '../work/task-in-words';
import styles from './bay.module.css';

interface FindingListProps {
  findings: readonly Finding[];
  looks: readonly { id: string; words: string }[];
  onRemove: (index: number) => void;
}

/** What has been found so far and goes along when the card is closed. */
export function FindingList({ findings, looks, onRemove }: FindingListProps) {
  if (findings.length === 0) return null;
  return (
    <ul className={styles.list} aria-label="Found">
      {findings.map((finding, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two findings may be alike, and the order is theirs
        <li key={index} className={styles.found}>
          <span>{findingInWords(finding, looks)}</span>
          <Button look="quiet" onClick={() => onRemove(index)}>
            Remove
          </Button>
        </li>
      ))}
    </ul>
  );
}
