import type { Metadata } from 'next';
import { Suspense } from 'react';
import { TyresPage } from '@/features/tyres/tyres-page';

export const metadata: Metadata = { title: 'Tyres and settings' };

export default function Page() {
  return (
    <Suspense>
      <TyresPage />
    </Suspense>
  );
}
