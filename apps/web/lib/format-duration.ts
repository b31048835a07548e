const SECONDS_IN_MINUTE = 60;
const SECONDS_IN_HOUR = 3600;

/** A span on a clock face: `4:05`, from an hour on `1:02:05`. The sign is left out: the words beside it tell. */
export function formatDuration(seconds: number): string {
  const whole = Math.abs(Math.trunc(seconds));
  const hours = Math.floor(whole / SECONDS_IN_HOUR);
  const minutes = Math.floor((whole % SECONDS_IN_HOUR) / SECONDS_IN_MINUTE);
  const rest = String(whole % SECONDS_IN_MINUTE).padStart(2, '0');
  return hours > 0 ? `${hours}:${String(minutes).padStart(2, '0')}:${rest}` : `${minutes}:${rest}`;
}
