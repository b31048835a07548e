import type { Metadata } from 'next';
import { Suspense } from 'react';
import { LogPage } from '@/features/log/log-page';

export const metadata: Metadata = { title: 'Log' };

export default function Page() {
  return (
    <Suspense>
      <LogPage />
    </Suspense>
  );
}
