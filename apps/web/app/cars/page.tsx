import type { Metadata } from 'next';
import { Suspense } from 'react';
import { CarsPage } from '@/features/cars/cars-page';

export const metadata: Metadata = { title: 'Cars' };

export default function Page() {
  return (
    <Suspense>
      <CarsPage />
    </Suspense>
  );
}
