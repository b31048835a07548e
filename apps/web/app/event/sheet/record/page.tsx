import type { Metadata } from 'next';
import { Suspense } from 'react';
import { RecordPage } from '@/features/sheet/record-page';

export const metadata: Metadata = { title: 'Record a sheet' };

export default function Page() {
  return (
    <Suspense>
      <RecordPage />
    </Suspense>
  );
}
