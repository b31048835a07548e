/** Whether a number is a whole second from 1970 to the year 9999. */
export function isInstant(at: number): boolean {
  return Number.isSafeInteger(at) && at >= 0 && at < 253_402_300_800;
}
