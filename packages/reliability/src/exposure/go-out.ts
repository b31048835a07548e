import type { PartRecord } from './car-history';
import { interrupt } from './end-good';
import { failPlaces, mayBeMeant } from './fail-places';
import type { Step } from './timeline';
import { beginPlace, type Watch } from './watch';

type Out = Extract<PartRecord, { kind: 'out' }>;

/**
 * The car is out. A part that put it out has failed; all others were good so far, and their watching ends for the reason
 * that is known. A car that moves again after a part put it out had something done that nobody wrote down.
 */
export function goOut(watch: Watch, step: Step, out: Out, restarts: boolean): void {
  const isCause = out.cardId === watch.question.cardId;
  if (isCause) failPlaces(watch, step, { position: out.position, how: out.where, temporary: false });
  interrupt(watch, step, reasonOf(out, restarts));
  if (isCause) takeUpUnknown(watch, step, out.position);
}

/** Not knowing why the car is out is not knowing that another part was the cause. */
function reasonOf({ cause, cardId }: Out, restarts: boolean): 'restarted' | 'withdrawn' | 'notFinished' {
  if (restarts) return 'restarted';
  return cause === null && cardId === null ? 'notFinished' : 'withdrawn';
}

function takeUpUnknown(watch: Watch, step: Step, said: string | null): void {
  for (const position of mayBeMeant(watch, said)) {
    const place = watch.places.get(position);
    if (place?.kind !== 'down') continue;
    const { part, design } = place;
    const next = { part: part + 1, design, origin: 'unknown' as const, entryAge: null, afterFailure: true };
    beginPlace(watch, position, step, next);
  }
}
