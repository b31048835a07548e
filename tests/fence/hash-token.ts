import { createHash } from 'node:crypto';

/** What the database keeps of a link's secret. */
export function hashToken(token: string): string {
  return createHash('sha256').update(token).digest('hex');
}
