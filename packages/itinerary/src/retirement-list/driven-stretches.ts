import type { Itinerary } from '../model';
import { groupByCar } from '../pasted-list/group-by-car';
import type { CarRecord, CarStop } from './model';
import { stageMetresAtStop, stageMetresBeforeSection, stageMetresOf } from './stage-metres';

/** Stage distance that a car drove without a break, in metres along the stages of the event. */
export interface DrivenStretch {
  carNumber: string;
  className: string;
  /** 0 for the start of the event, more where a car came back. */
  fromMetres: number;
  toMetres: number;
  /** Null for a car that finished, or was still running when it was seen last. */
  stop: CarStop | null;
}

export interface DrivenStretches {
  stretches: DrivenStretch[];
  /** Cars whose stage, control or section is not in the itinerary any more; they are counted nowhere. */
  leftOut: string[];
}

/**
 * What each car drove, from the list and the itinerary.
 *
 * - A finisher drove every stage of the itinerary; what was cancelled is not in it.
 * - A car that stopped drove up to there (`stageMetresAtStop`).
 * - A car that came back begins a new stretch where its section begins; what it missed in between counts for nothing.
 * - A car that was still running when it was seen last drove up to there.
 * - A car that did not start, or of which nobody knows anything, has no stretch for it.
 */
export function drivenStretches(records: readonly CarRecord[], itinerary: Itinerary): DrivenStretches {
  const stretches: DrivenStretch[] = [];
  const leftOut: string[] = [];
  for (const [carNumber, own] of groupByCar(records, (record) => record.carNumber)) {
    const driven = stretchesOfCar(own, itinerary);
    if (driven === null) leftOut.push(carNumber);
    else stretches.push(...driven);
  }
  return { stretches, leftOut };
}

function stretchesOfCar(own: readonly CarRecord[], itinerary: Itinerary): DrivenStretch[] | null {
  const stretches: DrivenStretch[] = [];
  let fromMetres: number | null = 0;
  for (const { carNumber, className, outcome, stop, reached, backFromSection } of own) {
    const place = stop?.place ?? reached;
    const toMetres = place ? stageMetresAtStop(itinerary, place) : stageMetresOf(itinerary);
    // A bulletin may have moved a section since the list was saved, so that the way would go backwards.
    if (fromMetres === null || toMetres === null || toMetres < fromMetres) return null;
    if (place || outcome === 'finished') stretches.push({ carNumber, className, fromMetres, toMetres, stop });
    if (backFromSection !== null) fromMetres = stageMetresBeforeSection(itinerary, backFromSection);
  }
  return stretches;
}
