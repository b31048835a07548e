import type { Metadata } from 'next';
import { Suspense } from 'react';
import { BayPage } from '@/features/bay/bay-page';

export const metadata: Metadata = { title: 'Bay' };

export default function Page() {
  return (
    <Suspense>
      <BayPage />
    </Suspense>
  );
}
