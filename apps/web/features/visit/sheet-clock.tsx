'use client';

import { formatClock, formatDay } from '@halfshaft/itinerary';
import { Countdown, TimeOfDay } from '@/components/clock';
import { useNow } from '@/lib/use-now';
import { type ServiceSheet, serviceName } from './sheet';
import styles from './sheet-clock.module.css';

const SECONDS_IN_DAY = 86_400;

/** The time at the event and what is left until the car comes or must leave. */
export function SheetClock({ sheet, timeZone }: { sheet: ServiceSheet; timeZone: string }) {
  const now = useNow();
  return (
    <div className={styles.clocks}>
      <TimeOfDay large label="Time at the event" time={now === null ? null : formatClock(now, timeZone)} />
      <Left sheet={sheet} timeZone={timeZone} now={now} />
    </div>
  );
}

function Left({ sheet, timeZone, now }: { sheet: ServiceSheet; timeZone: string; now: number | null }) {
  const { inAt, outAt } = sheet;
  if (now === null || (now < inAt && inAt - now < SECONDS_IN_DAY)) {
    return <Countdown large label="Car comes in" until={inAt} now={now} />;
  }
  if (now < inAt) return <p>The car comes in on {formatDay(inAt, timeZone)}.</p>;
  // Late is shown for as long again as the service lasted; after that nobody waits for this car.
  if (now < outAt + (outAt - inAt)) {
    return <Countdown large label="Car must leave in" until={outAt} now={now} overWords="late" />;
  }
  return <p>{serviceName(sheet.service)} is over.</p>;
}
