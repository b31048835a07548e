import { useEffect, useState } from 'react';
import { useClock } from '@/lib/clock';
import { browserZone, dayIn } from '../itinerary/time-zones';
import { emptyVisit, type VisitForm } from './visit-form';

/**
 * What the form begins with: today, in the browser's own zone. Null in the static page, which knows neither.
 */
export function useVisitStart(): VisitForm | null {
  const clock = useClock();
  const [start, setStart] = useState<VisitForm | null>(null);
  useEffect(() => {
    const zone = browserZone();
    setStart(emptyVisit(dayIn(zone, clock.now()), zone));
  }, [clock]);
  return start;
}
