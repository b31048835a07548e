import type { Metadata } from 'next';
import { Suspense } from 'react';
import { ItineraryPage } from '@/features/events/itinerary-page';

export const metadata: Metadata = { title: 'Itinerary' };

export default function Page() {
  return (
    <Suspense>
      <ItineraryPage />
    </Suspense>
  );
}
