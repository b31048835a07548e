import type { Metadata } from 'next';
import { Suspense } from 'react';
import { LoadingState } from '@/components/loading-state';
import { BayPage } from '@/features/bay/bay-page';
import { PageFrame } from '@/features/frame/page-frame';

export const metadata: Metadata = { title: 'Bay' };

export default function Page() {
  return (
    <Suspense fallback={<Waiting />}>
      <BayPage />
    </Suspense>
  );
}

/** Drawn from the file itself, before any script has come. */
function Waiting() {
  return (
    <PageFrame>
      <LoadingState wholePage words="Fetching the event …" />
    </PageFrame>
  );
}
