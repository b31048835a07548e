import type { CompiledService } from '../compile-service';
import { tiesOf } from '../generate/choose-work';

/** The numbers of all that any plan does: what must be done, and what opens and closes something for it. */
export function listForced(service: CompiledService): ReadonlySet<number> {
  const forced = new Set(service.tasks.filter(({ must }) => must).map(({ number }) => number));
  for (const { end, users } of tiesOf(service).ends) {
    if (users.some((user) => service.tasks[user]?.must)) forced.add(end);
  }
  return forced;
}
