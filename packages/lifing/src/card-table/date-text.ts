/**
 * An instant as a day, with the time of day (UTC) only where it is not midnight.
 *
 * @example
 * writeDate(1_806_451_200) // '2027-03-31'
 */
export function writeDate(epochSeconds: number): string {
  const text = new Date(epochSeconds * 1000).toISOString();
  const time = text.slice(11, 19);
  return time === '00:00:00' ? text.slice(0, 10) : `${text.slice(0, 10)} ${time}`;
}

/**
 * A day written 2027-03-31 or 31.03.2027, with or without a time of day, as seconds since 1970 (UTC). Null for anything
 * else: with slashes nobody knows whether the day or the month stands first.
 *
 * @example
 * readDate('31.03.2027') // 1_806_451_200
 */
export function readDate(text: string): number | null {
  const match =
    /^(?:(?<y>\d{4})-(?<m>\d{1,2})-(?<d>\d{1,2})|(?<d2>\d{1,2})\.(?<m2>\d{1,2})\.(?<y2>\d{4}))(?:[ T](?<h>\d{1,2}):(?<min>\d{2})(?::(?<s>\d{2}))?)?$/.exec(
      text.trim(),
    );
  if (!match?.groups) return null;
  const { y, m, d, y2, m2, d2, h = '0', min = '0', s = '0' } = match.groups;
  const [year, month, day] = [Number(y ?? y2), Number(m ?? m2), Number(d ?? d2)];
  const [hour, minute, second] = [Number(h), Number(min), Number(s)];
  const at = new Date(Date.UTC(year, month - 1, day, hour, minute, second));
  // A day no calendar has would roll over into the next month.
  const isReal =
    at.getUTCFullYear() === year &&
    at.getUTCMonth() === month - 1 &&
    at.getUTCDate() === day &&
    at.getUTCHours() === hour &&
    at.getUTCMinutes() === minute &&
    at.getUTCSeconds() === second;
  return isReal ? at.getTime() / 1000 : null;
}
