import type { Metadata } from 'next';
import { Suspense } from 'react';
import { BringInPage } from '@/features/carry/bring-in-page';

export const metadata: Metadata = { title: 'Bring an event in' };

export default function Page() {
  return (
    <Suspense>
      <BringInPage />
    </Suspense>
  );
}
