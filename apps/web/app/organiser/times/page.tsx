import type { Metadata } from 'next';
import { Suspense } from 'react';
import { TimesPage } from '@/features/times/times-page';

export const metadata: Metadata = { title: 'Times at controls' };

export default function Page() {
  return (
    <Suspense>
      <TimesPage />
    </Suspense>
  );
}
