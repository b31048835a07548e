import type { Metadata } from 'next';
import { Suspense } from 'react';
import { RetirementsPage } from '@/features/retirements/retirements-page';

export const metadata: Metadata = { title: 'Who stopped, and why' };

export default function Page() {
  return (
    <Suspense>
      <RetirementsPage />
    </Suspense>
  );
}
