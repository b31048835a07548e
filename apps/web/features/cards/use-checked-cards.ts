import type { JobCard } from '@halfshaft/lifing';
import { useEffect, useState } from 'react';
import { type CheckedCards, checkCardTable, type HowToImport } from './check-card-table';

const QUIET_MILLIS = 350;

/** The live check: said again once typing has paused. Null before the first time. */
export function useCheckedCards(
  text: string,
  how: HowToImport,
  before: readonly JobCard[],
): CheckedCards | null {
  const [checked, setChecked] = useState<CheckedCards | null>(null);

  useEffect(() => {
    const timer = setTimeout(() => setChecked(checkCardTable(text, how, before)), QUIET_MILLIS);
    return () => clearTimeout(timer);
  }, [text, how, before]);

  return checked;
}
