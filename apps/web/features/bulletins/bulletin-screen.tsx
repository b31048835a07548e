import type { OpenBulletin } from '@halfshaft/contract';
import { Notice } from '@/components/notice';
import { PageHeader } from '@/components/page-header';
import { Sheet } from '@/components/sheet';
import type { LoadedWork } from '../work/work-page';
import { AcceptBulletin } from './accept-bulletin';
import type { Accepted } from './accepted-bulletin';
import { issuedInWords } from './bulletin-words';
import styles from './bulletins.module.css';
import { SentenceList } from './sentence-list';

export interface BulletinScreenProps {
  work: LoadedWork;
  bulletin: OpenBulletin;
  onAccepted: (accepted: Accepted) => void;
}

/** One bulletin as it changes this team's event: for all, for each car, for its jobs; and who accepts it. */
export function BulletinScreen({ work, bulletin, onAccepted }: BulletinScreenProps) {
  const { replica } = work;
  const { number, organiserName, issuedAt, note, changes, cars } = bulletin;
  const { timeZone } = replica.itinerary;
  return (
    <>
      <PageHeader
        above={replica.name}
        title={`Bulletin ${number}`}
        facts={[`from ${organiserName}`, issuedInWords(issuedAt, timeZone), 'not accepted yet']}
      />
      {bulletin.replacesOwnVersion ? (
        <Notice kind="warning" title="Your own changes are replaced">
          <p>
            Version {replica.itineraryNumber} of the itinerary is your own. What stands below is the
            difference to that version, and accepting puts the organiser's in its place. Yours is kept among
            the earlier versions.
          </p>
        </Notice>
      ) : null}
      {note === '' ? null : (
        <Sheet title="The organiser writes">
          <p className={styles.note}>{note}</p>
        </Sheet>
      )}
      <Sheet title={cars.length > 1 ? 'What changes for all your cars' : 'What changes'}>
        {changes.length > 0 ? (
          <SentenceList sentences={changes} />
        ) : (
          <p>Nothing in the itinerary{cars.length > 1 ? ' that is the same for all cars' : ''}.</p>
        )}
        {cars.length === 0 ? <p>Times are those of start position 1: no car is entered yet.</p> : null}
      </Sheet>
      {cars.map((car) => (
        <CarChanges key={car.carNumber} car={car} />
      ))}
      <AcceptBulletin work={work} bulletin={bulletin} onAccepted={onAccepted} />
    </>
  );
}

function CarChanges({ car: { carNumber, changes, jobs } }: { car: OpenBulletin['cars'][number] }) {
  return (
    <Sheet title={`Car ${carNumber}`}>
      {changes.length > 0 ? (
        <>
          <h3>Its own times</h3>
          <SentenceList sentences={changes} />
        </>
      ) : null}
      <h3>Its jobs</h3>
      {jobs.length > 0 ? <SentenceList sentences={jobs} /> : <p>Every job stays due where it was.</p>}
    </Sheet>
  );
}
