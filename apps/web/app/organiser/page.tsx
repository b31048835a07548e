import type { Metadata } from 'next';
import { Suspense } from 'react';
import { OrganiserPage } from '@/features/organiser/organiser-page';

export const metadata: Metadata = { title: 'Organiser' };

export default function Page() {
  return (
    <Suspense>
      <OrganiserPage />
    </Suspense>
  );
}
