import type { Ending } from './exposure';
import type { Step } from './timeline';
import { ageOf, beginPlace, type Running, type Watch, writeExposure } from './watch';

/** A part comes off, or is altered, in somebody's hands and was good to the last. */
export function endInHand(
  watch: Watch,
  position: string | null,
  place: Running,
  step: Step,
  ending: 'replaced' | 'modified',
): void {
  writeExposure(watch, position, place, { ending, to: step.total, goodTo: step.total, ended: step.spot });
}

/** The car's driving ends; a part whose failure can stay hidden is known to be good only up to the last look. */
export function endUnseen(
  watch: Watch,
  position: string | null,
  place: Running,
  step: Step,
  ending: Ending,
): void {
  const goodTo = knownGoodTo(watch, place, step);
  writeExposure(watch, position, place, { ending, to: step.total, goodTo, ended: step.spot });
}

/** The driving ends for every part that has not failed, and the watching is taken up again where the car stands. */
export function interrupt(watch: Watch, step: Step, ending: 'withdrawn' | 'notFinished' | 'restarted'): void {
  for (const [position, place] of watch.places) {
    if (place.kind === 'down' || place.from === step.total) continue;
    endUnseen(watch, position, place, step, ending);
    beginPlace(watch, position, step, {
      part: place.part,
      design: place.design,
      origin: 'resumed',
      entryAge: ageOf(place, step.total),
      goodTo: knownGoodTo(watch, place, step),
    });
  }
}

function knownGoodTo({ question }: Watch, place: Running, { total }: Step): number {
  return question.shows === 'atOnce' ? total : place.goodTo;
}
