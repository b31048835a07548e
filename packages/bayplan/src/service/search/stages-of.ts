import type { CompiledService } from '../compile-service';
import { tiesOf } from '../generate/choose-work';

/**
 * In which of three rounds each task is best given its place: what must be done, with all that it waits for and what opens
 * and closes for others (0); what needs something open, so that it isn't closed too late (1); the rest (2).
 */
export function stagesOf(service: CompiledService): Uint8Array {
  const { ends } = tiesOf(service);
  const users = new Set(ends.flatMap((one) => one.users));
  const first = new Set([
    ...service.tasks.filter(({ must }) => must).map(({ number }) => number),
    ...ends.map(({ end }) => end),
  ]);
  // Grows while it is walked: what comes before the first ones belongs to them.
  for (const one of first) {
    for (const { before, after } of service.links) if (after === one) first.add(before);
  }
  return Uint8Array.from(service.tasks, ({ number }) => (first.has(number) ? 0 : users.has(number) ? 1 : 2));
}
