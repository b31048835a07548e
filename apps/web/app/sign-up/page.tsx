import type { Metadata } from 'next';
import { Suspense } from 'react';
import { LoadingState } from '@/components/loading-state';
import { SignUp } from '@/features/account/sign-up';
import { PageFrame } from '@/features/frame/page-frame';

export const metadata: Metadata = { title: 'Make an account' };

export default function SignUpPage() {
  return (
    <PageFrame>
      <Suspense fallback={<LoadingState words="One moment …" />}>
        <SignUp />
      </Suspense>
    </PageFrame>
  );
}
