import type { Metadata } from 'next';
import { Suspense } from 'react';
import { FailingPage } from '@/features/retirements/failing-page';

export const metadata: Metadata = { title: 'What keeps failing' };

export default function Page() {
  return (
    <Suspense>
      <FailingPage />
    </Suspense>
  );
}
