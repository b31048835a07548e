import type { WallClock } from './wall-clock';

/**
 * A distance cell in km as whole metres; null when it is no number. Takes a decimal comma or point and a trailing
 * `km`. No thousands separator: `1,301.25` would be a guess.
 *
 * @example
 * readKilometres('16,65') // 16650
 */
export function readKilometres(cell: string): number | null {
  const parts = /^([-−])?(\d{1,7})(?:[.,](\d{1,9}))?(?: ?km)?$/i.exec(cell);
  if (!parts) return null;
  const thousandths = `${parts[3] ?? ''}0000`;
  const metres =
    Number(parts[2]) * 1000 + Number(thousandths.slice(0, 3)) + (Number(thousandths[3]) >= 5 ? 1 : 0);
  return parts[1] && metres !== 0 ? -metres : metres;
}

/**
 * A length of time, `h:mm` or `h:mm:ss`, in seconds; null when it is none.
 *
 * @example
 * readDuration('1:30') // 5400
 */
export function readDuration(cell: string): number | null {
  const parts = /^(\d{1,2})[:h](\d{2})(?::(\d{2}))?$/i.exec(cell);
  return parts ? inSeconds(parts[1], parts[2], parts[3]) : null;
}

/**
 * A stage's gap in seconds: a length of time, or plain minutes; null when it is neither.
 *
 * @example
 * readGap('3 min') // 180
 */
export function readGap(cell: string): number | null {
  const minutes = /^(\d{1,3})(?: ?min)?$/i.exec(cell);
  return minutes ? Number(minutes[1]) * 60 : readDuration(cell);
}

/**
 * A time of day, `hh:mm` or `hh:mm:ss`, with an optional offset from UTC; null when it is none.
 *
 * @example
 * readWallClock('08:13') // { secondOfDay: 29580, offsetSeconds: null }
 */
export function readWallClock(cell: string): WallClock | null {
  const parts = /^(\d{1,2})[:h](\d{2})(?::(\d{2}))?(?: ?([+-])(\d{2}):(\d{2}))?$/i.exec(cell);
  if (!parts) return null;
  const secondOfDay = inSeconds(parts[1], parts[2], parts[3]);
  if (secondOfDay === null || secondOfDay >= 86_400) return null;
  if (!parts[4]) return { secondOfDay, offsetSeconds: null };
  const offset = inSeconds(parts[5], parts[6], '0');
  if (offset === null || offset > 18 * 3600) return null;
  return { secondOfDay, offsetSeconds: parts[4] === '-' ? -offset : offset };
}

/** One start block as written in a cell, before its section is known. */
export interface WrittenBlock {
  fromPosition: number;
  intervalSeconds: number;
}

/**
 * Start intervals, `120 s` or `120 s, from 11: 60 s`; seconds unless `min` is written. Null when it is none.
 *
 * @example
 * readIntervals('2 min, from 11: 60 s') // [{ fromPosition: 1, intervalSeconds: 120 }, { fromPosition: 11, intervalSeconds: 60 }]
 */
export function readIntervals(cell: string): WrittenBlock[] | null {
  const blocks: WrittenBlock[] = [];
  for (const [order, part] of cell.split(/[,;]/).entries()) {
    const words = /^(?:from (\d{1,6}) ?:? )?(\d{1,6})(?: ?(s|sec|min))?$/i.exec(part.trim());
    if (!words || (order === 0) !== (words[1] === undefined)) return null;
    const intervalSeconds = Number(words[2]) * (words[3]?.toLowerCase() === 'min' ? 60 : 1);
    blocks.push({ fromPosition: Number(words[1] ?? 1), intervalSeconds });
  }
  return blocks;
}

function inSeconds(hours?: string, minutes?: string, seconds?: string): number | null {
  const [wholeMinutes, rest] = [Number(minutes), Number(seconds ?? 0)];
  if (wholeMinutes > 59 || rest > 59) return null;
  return Number(hours) * 3600 + wholeMinutes * 60 + rest;
}
