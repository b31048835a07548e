import type { Metadata } from 'next';
import { Suspense } from 'react';
import { BulletinPage } from '@/features/bulletins/bulletin-page';

export const metadata: Metadata = { title: 'Bulletin' };

export default function Page() {
  return (
    <Suspense>
      <BulletinPage />
    </Suspense>
  );
}
