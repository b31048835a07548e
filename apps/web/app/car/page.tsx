import type { Metadata } from 'next';
import { Suspense } from 'react';
import { CarPage } from '@/features/cars/car-page';

export const metadata: Metadata = { title: 'Car' };

export default function Page() {
  return (
    <Suspense>
      <CarPage />
    </Suspense>
  );
}
