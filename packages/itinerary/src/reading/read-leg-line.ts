import { excerpt } from '../excerpt';
import type { RowReader } from '../row-reader';
import type { LegRow } from '../table-row';
import { legOf } from './row-words';
import { writtenDate } from './written-date';

/**
 * A line that opens a leg, with its number and its date in figures or words, and the section it may name as well:
 * `Leg 2, 2026-06-13`, `Etappe 2 – Samstag, 13. Juni`, `Section 3 – Day 2 – Saturday 13th June 2026`.
 */
export function readLegLine(
  line: string,
  sourceRow: number,
  near: string,
  reader: Pick<RowReader, 'tell'>,
): { row: LegRow; section: number | null } {
  const date = writtenDate(withoutCodes(line), near);
  const number = legOf(line)?.number ?? null;
  const section = /\bsection (\d{1,4})\b(?! ?[-–,&/+] ?\d)/i.exec(line)?.[1];
  const isMalformed = date === 'malformed' || (date === null && looksDated(line));
  if (isMalformed) {
    const message = `The date in “${excerpt(line)}” cannot be read. Write it as 2026-06-13, or leave it out.`;
    reader.tell('id', 'leg-date-malformed', message);
  } else if (date?.otherWeekday) {
    const message = `“${excerpt(line)}” names another weekday, but ${date.date} is a ${date.otherWeekday}. Check the date.`;
    reader.tell('id', 'weekday-differs', message);
  }
  return {
    row: { type: 'leg', row: sourceRow, number, date: isMalformed || date === null ? null : date.date },
    section: section === undefined ? null : Number(section),
  };
}

/** Stage and control codes, and times of day, are no dates ("Leg 2, SS5 to SS9, start 07:30"). */
function withoutCodes(line: string): string {
  return line
    .replace(/\b(?:SSS?|TC|WP|SP|ES|PS|ZK|CH|CO)s? ?\d+[A-Z]?\b/gi, ' ')
    .replace(/\d{1,2}[:h]\d{2}/g, ' ');
}

function looksDated(line: string): boolean {
  const words = withoutCodes(line).replace(
    /\b(?:leg|day|etappe|tag|étape|etape|jour|etapa|día|dia|tappa|giorno|sections?)\W{0,3}\d{1,3}(?![\d.\-/])/giu,
    ' ',
  );
  return /\d/.test(words.replace(/\d+(?:[.,]\d+)? ?(?:km|mi|miles)\b/gi, ' '));
}
