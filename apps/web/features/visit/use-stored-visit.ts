import type { Visit } from '@halfshaft/contract';
import { useEffect, useState } from 'react';
import { KEPT_FORMS } from '@/lib/keep-typed';
import { pickKept } from '@/lib/pick-kept';
import { readStored } from '@/lib/storage';
import { useVisitStart } from './use-visit-start';
import { readVisit, VISIT_KEY } from './visit-form';

export interface StoredVisit {
  visit: Visit;
  eventName: string;
}

/** What `/try/` left on this device; null when there is none that could be kept, undefined while not looked yet. */
export function useStoredVisit(): StoredVisit | null | undefined {
  const start = useVisitStart();
  const [stored, setStored] = useState<StoredVisit | null | undefined>(undefined);
  useEffect(() => {
    if (start === null) return;
    const form = { ...start, ...pickKept(readStored(KEPT_FORMS + VISIT_KEY), start) };
    const read = readVisit(form);
    const isUsable = read.ok && read.visit.itinerary.source.trim() !== '';
    setStored(isUsable ? { visit: read.visit, eventName: form.eventName } : null);
  }, [start]);
  return stored;
}
