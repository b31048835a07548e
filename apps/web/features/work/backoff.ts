const FIRST_PAUSE_MILLIS = 1000;
const LONGEST_PAUSE_MILLIS = 30_000;

/** One, two, four … seconds, at most half a minute, where nothing else is given. `attempt` counts from 0. */
export function pauseMillis(
  attempt: number,
  firstMillis = FIRST_PAUSE_MILLIS,
  longestMillis = LONGEST_PAUSE_MILLIS,
): number {
  return Math.min(longestMillis, firstMillis * 2 ** attempt);
}

/** Tries something again after growing pauses, one try at a time. */
export class Backoff {
  private attempt = 0;
  private timer: ReturnType<typeof setTimeout> | undefined;

  again(run: () => void): void {
    clearTimeout(this.timer);
    this.timer = setTimeout(run, pauseMillis(this.attempt));
    this.attempt += 1;
  }

  /** It went well, or there is a reason to believe that it now will: the next pause is the first one. */
  reset(): void {
    clearTimeout(this.timer);
    this.timer = undefined;
    this.attempt = 0;
  }
}
