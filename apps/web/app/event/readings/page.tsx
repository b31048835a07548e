import type { Metadata } from 'next';
import { Suspense } from 'react';
import { ReadingsPage } from '@/features/readings/readings-page';

export const metadata: Metadata = { title: 'Readings' };

export default function Page() {
  return (
    <Suspense>
      <ReadingsPage />
    </Suspense>
  );
}
