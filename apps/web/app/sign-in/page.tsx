import type { Metadata } from 'next';
import { Suspense } from 'react';
import { LoadingState } from '@/components/loading-state';
import { SignIn } from '@/features/account/sign-in';
import { PageFrame } from '@/features/frame/page-frame';

export const metadata: Metadata = { title: 'Sign in' };

export default function SignInPage() {
  return (
    <PageFrame>
      <Suspense fallback={<LoadingState words="One moment …" />}>
        <SignIn />
      </Suspense>
    </PageFrame>
  );
}
