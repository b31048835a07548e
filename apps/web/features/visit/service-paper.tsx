import { formatClock, formatDay } from '@halfshaft/itinerary';
import { PersonList } from './person-list';
import styles from './service-paper.module.css';
import { type ServiceSheet, serviceName } from './sheet';
import { minutesOfTime, minutesOfWork, needInWords } from './time-in-words';

interface ServicePaperProps {
  sheet: ServiceSheet;
  eventName: string;
  timeZone: string;
}

const GATE = ['on stands, on boards', 'wheels chocked', 'engine off', 'extinguisher by it'];

/** The sheet of one service by person, as it is printed. */
export function ServicePaper({ sheet, eventName, timeZone }: ServicePaperProps) {
  const { service, startPosition, inAt, outAt, shares, canWait } = sheet;
  const title = `${serviceName(service)} · ${minutesOfTime(service.allowedSeconds)} min`;
  return (
    <article className={styles.paper} aria-label={`The sheet for ${serviceName(service)}`}>
      <header className={styles.head}>
        <div className={styles.names}>
          <h3 className={styles.title}>{title}</h3>
          <p>
            {[eventName.trim(), formatDay(inAt, timeZone), `start position ${startPosition}`]
              .filter(Boolean)
              .join(' · ')}
          </p>
        </div>
        <dl className={styles.times}>
          <Time label={`In ${service.inControl}`} time={formatClock(inAt, timeZone)} />
          <Time label={`Out ${service.outControl}`} time={formatClock(outAt, timeZone)} />
          <Time label="Written in" time={null} />
        </dl>
      </header>
      <Minutes sheet={sheet} />
      <p className={styles.gate}>
        <strong>Before anyone goes under:</strong>
        {GATE.map((words) => (
          <span key={words} className={styles.check}>
            <span className={styles.box} aria-hidden="true" />
            {words}
          </span>
        ))}
        <span className={styles.line}>checked by</span>
      </p>
      <div className={styles.people}>
        {Array.from(shares.keys(), (index) => (
          <PersonList
            key={index}
            number={index + 1}
            shares={shares}
            clockSeconds={sheet.usable.clockSeconds}
          />
        ))}
      </div>
      {canWait.length > 0 ? (
        <section className={styles.wait}>
          <h4>Can wait</h4>
          <ul className={styles.waiting}>
            {canWait.map((card) => (
              <li key={card.name}>
                {card.name}: {card.overdue ? 'past its limit, ' : ''}
                {card.reason}
              </li>
            ))}
          </ul>
        </section>
      ) : null}
    </article>
  );
}

function Minutes({ sheet }: { sheet: ServiceSheet }) {
  const { usable, neededSeconds, ifTimeSeconds } = sheet;
  return (
    <p className={styles.minutes}>
      <strong>{needInWords(neededSeconds, usable.personSeconds)}</strong>{' '}
      {ifTimeSeconds > 0 ? `If time: ${minutesOfWork(ifTimeSeconds)} more. ` : ''}
      Settling and closing up are taken off. A new team usually gets about{' '}
      {minutesOfTime(usable.likelyPersonSeconds)} done. The car is taken as prepared at home, and what fell
      due at an earlier service as done there.
    </p>
  );
}

function Time({ label, time }: { label: string; time: string | null }) {
  return (
    <div className={styles.time}>
      <dt>{label}</dt>
      <dd>{time ?? <span className={styles.blank} />}</dd>
    </div>
  );
}
