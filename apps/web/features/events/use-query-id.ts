import { useSearchParams } from 'next/navigation';
import { z } from '@/lib/zod';

const id = z.uuid();

/** An id from the query string; null when it is missing or mangled. */
export function useQueryId(name: 'team' | 'event' | 'car' | 'organiser'): string | null {
  const value = useSearchParams().get(name);
  return id.safeParse(value).success ? value : null;
}
