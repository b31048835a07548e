import type { Metadata } from 'next';
import { Suspense } from 'react';
import { NewEventPage } from '@/features/events/new-event-page';

export const metadata: Metadata = { title: 'New event' };

export default function Page() {
  return (
    <Suspense>
      <NewEventPage />
    </Suspense>
  );
}
