import styles from './bulletins.module.css';

/** What changes, a sentence each. */
export function SentenceList({ sentences }: { sentences: readonly string[] }) {
  return (
    <ul className={styles.sentences}>
      {sentences.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
}
