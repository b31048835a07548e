const MILLIS_IN_SECOND = 1000;

/** Whether a link still lets people in; `now` in seconds, the others in milliseconds, as they come. */
export function isOpen(
  { revokedAt, expiresAt }: { revokedAt: number | null; expiresAt: number },
  now: number,
): boolean {
  return revokedAt === null && expiresAt > now * MILLIS_IN_SECOND;
}
