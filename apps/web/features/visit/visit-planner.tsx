'use client';

import { LoadingState } from '@/components/loading-state';
import { useVisitStart } from './use-visit-start';
import { VisitDesk } from './visit-desk';

/** The first two minutes without an account. Everything is worked out in the browser; nothing is sent. */
export function VisitPlanner() {
  const start = useVisitStart();
  return start === null ? <LoadingState words="One moment …" /> : <VisitDesk start={start} />;
}
