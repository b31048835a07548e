import type { Metadata } from 'next';
import { Suspense } from 'react';
import { ReliabilityPage } from '@/features/reliability/reliability-page';

export const metadata: Metadata = { title: 'What keeps failing' };

export default function Page() {
  return (
    <Suspense>
      <ReliabilityPage />
    </Suspense>
  );
}
