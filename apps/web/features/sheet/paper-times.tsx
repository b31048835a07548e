import { type EpochSeconds, formatClock } from '@halfshaft/itinerary';
import type { VisitTimes } from '../control/visit-times';
import type { Visit } from '../service/visit';
import { callOffSteps } from './call-off';
import styles from './sheet.module.css';

interface PaperTimesProps {
  visit: Visit;
  times: VisitTimes;
  timeZone: string;
}

/** When the car is in and must be out, and by when the last steps must begin. */
export function PaperTimes({ visit, times, timeZone }: PaperTimesProps) {
  const { service } = visit;
  const clock = (at: EpochSeconds) => formatClock(at, timeZone);
  return (
    <dl className={styles.times}>
      <div>
        <dt>
          {times.recordedIn ? 'In' : 'Planned in'} {service.inControl}
        </dt>
        <dd>{clock(times.inAt)}</dd>
      </div>
      <div>
        <dt>Written in</dt>
        <dd>
          <span className={styles.blank} />
        </dd>
      </div>
      {callOffSteps(times.inAt, times.dueOut).map((step) => (
        <div key={step.words}>
          <dt>{step.words}</dt>
          <dd>{clock(step.at)}</dd>
        </div>
      ))}
      <div>
        <dt>Out {service.outControl}</dt>
        <dd>{clock(times.dueOut)}</dd>
      </div>
    </dl>
  );
}
