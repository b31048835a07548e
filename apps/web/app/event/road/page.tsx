import type { Metadata } from 'next';
import { Suspense } from 'react';
import { RoadPage } from '@/features/road/road-page';

export const metadata: Metadata = { title: 'On the road' };

export default function Page() {
  return (
    <Suspense>
      <RoadPage />
    </Suspense>
  );
}
