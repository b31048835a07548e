import type { Metadata } from 'next';
import { Suspense } from 'react';
import { EventOverviewPage } from '@/features/events/event-overview';

export const metadata: Metadata = { title: 'Event' };

export default function Page() {
  return (
    <Suspense>
      <EventOverviewPage />
    </Suspense>
  );
}
