'use client';

import { ErrorState } from '@/components/error-state';
import { PageFrame } from '@/features/frame/page-frame';

export default function PageError({ retry }: { error: unknown; retry: () => void }) {
  return (
    <PageFrame>
      <ErrorState
        sentence="This page stopped because of a fault in the program, not because of anything you did."
        onTryAgain={retry}
      >
        <p>
          What you entered is kept on this device. If it stops again at the same place, tell the person who
          runs Halfshaft for your team what you were doing.
        </p>
      </ErrorState>
    </PageFrame>
  );
}
