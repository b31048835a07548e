import { Disclosure } from '@/components/disclosure';
import { Sheet } from '@/components/sheet';
import type { IssuedBulletin } from '../organiser/organiser-event';
import { issuedInWords } from './bulletin-words';
import styles from './bulletins.module.css';
import { SentenceList } from './sentence-list';

/** All that was issued, newest first, each with its note and what it changed. */
export function IssuedList({ issued, timeZone }: { issued: readonly IssuedBulletin[]; timeZone: string }) {
  return (
    <Sheet title="Issued so far">
      <ol className={styles.issued}>
        {issued.map((bulletin) => (
          <li key={bulletin.number}>
            <IssuedLine bulletin={bulletin} timeZone={timeZone} />
          </li>
        ))}
      </ol>
    </Sheet>
  );
}

function IssuedLine({ bulletin, timeZone }: { bulletin: IssuedBulletin; timeZone: string }) {
  const { number, note, issuedAt, changes } = bulletin;
  const count = changes.length === 1 ? '1 change' : `${changes.length} changes`;
  return (
    <>
      <h3>{number === 0 ? 'The itinerary as published' : `Bulletin ${number}`}</h3>
      <p className={styles.when}>{issuedInWords(issuedAt, timeZone)}</p>
      {note === '' ? null : <p className={styles.note}>{note}</p>}
      {changes.length > 0 ? (
        <Disclosure summary={count}>
          <SentenceList sentences={changes} />
        </Disclosure>
      ) : null}
    </>
  );
}
