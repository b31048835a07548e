import type { ReadGauge, ReadingsQuestion } from '@halfshaft/lifing';
import type { CardId } from '@halfshaft/worklog';
import { slotKey } from '../bay/read-typed';
import type { Visit } from '../service/visit';
import { readInWords } from './read-in-words';

export interface LastRead {
  /** For paper: "last 4.6". */
  short: string;
  /** For beside the box to type into: "last 4.6 at Service A". */
  words: string;
}

/**
 * What was read last at each place of a card, by `slotKey`. A part that has not been read yet has no last value, and
 * the place says so.
 *
 * @example
 * lastReadOf(corner.id, gauges, visit, question).get('pads FL')?.words // 'last 4.6 at Service A'
 */
export function lastReadOf(
  cardId: CardId,
  gauges: readonly ReadGauge[],
  { service }: Visit,
  { serviceName = (id) => `Service ${id}` }: Pick<ReadingsQuestion, 'serviceName'>,
): Map<string, LastRead> {
  const found = new Map<string, LastRead>();
  for (const { gauge, series } of gauges) {
    if (gauge.card.id !== cardId) continue;
    for (const { position, readings, part } of series) {
      const last = readings.at(-1);
      if (last === undefined) continue;
      const where = last.serviceId === service.id ? 'here' : `at ${serviceName(last.serviceId)}`;
      const short = last.part < part ? 'new part' : `last ${readInWords(gauge.spec, last.value)}`;
      const words = last.part < part ? short : `${short} ${where}`;
      found.set(slotKey(gauge.spec.id, position), { short, words });
    }
  }
  return found;
}
