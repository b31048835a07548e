import type { Metadata } from 'next';
import { Suspense } from 'react';
import { EndPage } from '@/features/end/end-page';

export const metadata: Metadata = { title: 'After the event' };

export default function Page() {
  return (
    <Suspense>
      <EndPage />
    </Suspense>
  );
}
