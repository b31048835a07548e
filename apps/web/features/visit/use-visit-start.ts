import { useEffect, useState } from 'react';
import { useClock } from '@/lib/clock';
import { emptyVisit, type VisitForm } from './visit-form';

/**
 * What the form begins with: today, in the browser's own zone. Null in the static page, which knows neither.
 */
export function useVisitStart(): VisitForm | null {
  const clock = useClock();
  const [start, setStart] = useState<VisitForm | null>(null);
  useEffect(() => {
    const { timeZone } = Intl.DateTimeFormat().resolvedOptions();
    setStart(emptyVisit(dayIn(clock.now(), timeZone), timeZone));
  }, [clock]);
  return start;
}

function dayIn(millis: number, timeZone: string): string {
  // The Swedish way of writing a date is year-month-day.
  return new Intl.DateTimeFormat('sv-SE', { timeZone, dateStyle: 'short' }).format(millis);
}
