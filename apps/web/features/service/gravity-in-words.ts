import type { Snag } from '@halfshaft/worklog';

/** How bad a snag is, where that says more than that it is one. */
export function gravityInWords({ urgent, stop }: Pick<Snag, 'urgent' | 'stop'>): string {
  if (stop) return 'stop for this';
  return urgent ? 'urgent' : '';
}
