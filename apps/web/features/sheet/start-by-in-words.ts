import type { VisitRow } from '@halfshaft/bayplan';

/**
 * By when a row must begin; nothing where that is the very minute it is planned for, which is told once for the sheet.
 *
 * @example
 * startByInWords({ start: 0, startBy: 600 }, clockAt, 'or leave it') // 'start by 13:14 or leave it'
 */
export function startByInWords(
  { start, startBy }: Pick<VisitRow, 'start' | 'startBy'>,
  clockAt: (seconds: number) => string,
  otherwise: string,
): string {
  const latest = clockAt(startBy);
  if (latest === clockAt(start)) return otherwise === '' ? '' : `start then ${otherwise}`;
  return ['start by', latest, otherwise].filter(Boolean).join(' ');
}
