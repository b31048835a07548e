import { useSearchParams } from 'next/navigation';

/** As RFC 9562 writes it. */
const UUID = /^[\da-f]{8}-[\da-f]{4}-[1-8][\da-f]{3}-[89ab][\da-f]{3}-[\da-f]{12}$/i;

/** An id from the query string; null when it is missing or mangled. */
export function useQueryId(name: 'team' | 'event' | 'car' | 'organiser'): string | null {
  const value = useSearchParams().get(name);
  return value !== null && UUID.test(value) ? value : null;
}
