'use client';

import { QueryClientProvider } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { queryClient } from '@/lib/api';
import { ClockContext, systemClock } from '@/lib/clock';

/** What every page stands on: answers of the server kept in memory, and the clock. */
export function Providers({ children }: { children: ReactNode }) {
  return (
    <QueryClientProvider client={queryClient}>
      <ClockContext value={systemClock}>{children}</ClockContext>
    </QueryClientProvider>
  );
}
