import type { Metadata } from 'next';
import { Suspense } from 'react';
import { SheetPage } from '@/features/sheet/sheet-page';

export const metadata: Metadata = { title: 'Sheet by person' };

export default function Page() {
  return (
    <Suspense>
      <SheetPage />
    </Suspense>
  );
}
