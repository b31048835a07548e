import type { Metadata } from 'next';
import { Suspense } from 'react';
import { ServicePage } from '@/features/service/service-page';

export const metadata: Metadata = { title: 'Service' };

export default function Page() {
  return (
    <Suspense>
      <ServicePage />
    </Suspense>
  );
}
