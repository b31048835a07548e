'use client';

import { PersistQueryClientProvider } from '@tanstack/react-query-persist-client';
import type { ReactNode } from 'react';
// The fault page and "not found" come with every page and stand in the same frame: named here, it is fetched once, not thrice.
import '@/features/frame/page-frame';
import { queryClient } from '@/lib/api';
import { ClockContext, systemClock } from '@/lib/clock';
import { keptAnswers } from '@/lib/kept-answers';

/** What every page stands on: answers of the server, kept on the device, and the clock. */
export function Providers({ children }: { children: ReactNode }) {
  return (
    <PersistQueryClientProvider client={queryClient} persistOptions={keptAnswers}>
      <ClockContext value={systemClock}>{children}</ClockContext>
    </PersistQueryClientProvider>
  );
}
