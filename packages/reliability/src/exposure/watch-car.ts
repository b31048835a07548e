import type { CarHistory, PartQuestion, PartRecord } from './car-history';
import { closeCard } from './close-card';
import { endUnseen, interrupt } from './end-good';
import { failPlaces } from './fail-places';
import { goOut } from './go-out';
import { modifyPlaces, placesOfGoodWord, renewPlaces, repairPlaces } from './renew-places';
import { type Step, timelineOf } from './timeline';
import { beginWatch, type Watch } from './watch';

/** What one car's history says of the parts of one card. */
export function watchCar(car: CarHistory, question: PartQuestion): Watch {
  const watch = beginWatch(car, question);
  const steps = timelineOf(car, question.counter);
  for (const [index, step] of steps.entries()) {
    const { happening } = step;
    if (happening.kind === 'eventEnded') {
      if (!happening.finished) interrupt(watch, step, 'notFinished');
    } else if (happening.kind === 'out') {
      goOut(watch, step, happening, restartsFrom(steps, index));
    } else if ('cardId' in happening && happening.cardId === question.cardId) {
      takeRecord(watch, step, happening);
    }
  }
  const last = steps.at(-1);
  if (last) endWatch(watch, last);
  return watch;
}

type OfPart = Exclude<PartRecord, { kind: 'out' } | { kind: 'restarted' }>;

function takeRecord(watch: Watch, step: Step, record: OfPart): void {
  switch (record.kind) {
    case 'closed':
      closeCard(watch, step, record);
      break;
    case 'broke':
      failPlaces(watch, step, { position: record.position, how: record.where, temporary: false });
      break;
    case 'fitted':
      fitPart(watch, step, record);
      break;
    case 'madeGood':
      repairPlaces(watch, step, record.position);
      break;
    case 'modified':
      modifyPlaces(watch, step, record.position, record.newPart);
      break;
  }
}

function fitPart(watch: Watch, step: Step, record: Extract<PartRecord, { kind: 'fitted' }>): void {
  const { position, because } = record;
  if (because === 'broken') failPlaces(watch, step, { position, how: 'looked', temporary: false });
  renewPlaces(watch, step, placesOfGoodWord(watch, position));
}

/** Whether the car that went out here goes on from where it stands. */
function restartsFrom(steps: readonly Step[], index: number): boolean {
  const total = steps[index]?.total;
  for (const { happening, total: later } of steps.slice(index + 1)) {
    if (later !== total || happening.kind === 'out') return false;
    if (happening.kind === 'restarted') return true;
  }
  return false;
}

function endWatch(watch: Watch, last: Step): void {
  for (const [position, place] of watch.places) {
    if (place.kind === 'running') endUnseen(watch, position, place, last, 'running');
  }
}
