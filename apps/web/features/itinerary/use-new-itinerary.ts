import { useEffect, useState } from 'react';
import { useClock } from '@/lib/clock';
import { type ItineraryForm, newItineraryForm } from './itinerary-form';
import { browserZone, dayIn } from './time-zones';

/** Zone and day are the browser's, which the static page does not know; null until the page has woken up. */
export function useNewItinerary(): ItineraryForm | null {
  const clock = useClock();
  const [start, setStart] = useState<ItineraryForm | null>(null);
  useEffect(() => {
    const zone = browserZone();
    setStart(newItineraryForm(zone, dayIn(zone, clock.now())));
  }, [clock]);
  return start;
}
