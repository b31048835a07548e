/**
 * A length of time as the strict table writes it, `h:mm`: `0:30 min`, `1h30`, `1 h 30 min`, `44 min` and `0:44 h` are all
 * read; plain minutes where the heading says minutes. A cell that is none comes back as it is, to be reported.
 *
 * @example
 * writtenDuration('44 min', null) // '0:44'
 */
export function writtenDuration(cell: string, unit: 'miles' | 'minutes' | null): string {
  const clock = /^(\d{1,2}) ?[:h] ?(\d{2})(:\d{2})? ?(?:min|mins|minutes|h|hrs?|hours)?\.?$/i.exec(cell);
  if (clock) return `${clock[1]}:${clock[2]}${clock[3] ?? ''}`;
  const words = /^(\d{1,2}) ?h(?:rs?|ours?)? ?(\d{1,2}) ?(?:m|min|mins|minutes)\.?$/i.exec(cell);
  if (words) return inHours(Number(words[1]) * 60 + Number(words[2]));
  const minutes = /^(\d{1,3}) ?(m|min|mins|minutes|['′])?\.?$/i.exec(cell);
  if (minutes && (minutes[2] !== undefined || unit === 'minutes')) return inHours(Number(minutes[1]));
  return cell;
}

/**
 * A time of day as the strict table writes it, `hh:mm`: `8.13`, `08:13 Uhr`, `8h13`, `0813` and `8:13 pm` are all read. A
 * cell that is none comes back as it is, to be reported.
 *
 * @example
 * writtenClock('9:20 pm') // '21:20'
 */
export function writtenClock(cell: string): string {
  const match =
    /^(\d{1,2})(?: ?[:.h] ?(\d{2})|(?<=^\d{2})(\d{2}))(:\d{2})? ?(am|pm|a\.m\.|p\.m\.|h|hrs?|hours|uhr)?\.?$/i.exec(
      cell,
    );
  if (!match) return cell;
  const half = match[5]?.toLowerCase().replaceAll('.', '');
  const hour = Number(match[1]);
  const isHalf = half === 'am' || half === 'pm';
  if (isHalf && (hour < 1 || hour > 12)) return cell;
  const hours = isHalf ? (hour % 12) + (half === 'pm' ? 12 : 0) : hour;
  return `${String(hours).padStart(2, '0')}:${match[2] ?? match[3]}${match[4] ?? ''}`;
}

function inHours(minutes: number): string {
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
}
