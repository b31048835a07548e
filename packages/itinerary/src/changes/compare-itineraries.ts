import type { Itinerary } from '../model';
import type { PositionsBySection } from '../position-in';
import { comparePoints } from './compare-points';
import { compareRefuels } from './compare-refuels';
import { compareServices } from './compare-services';
import { compareStarts } from './compare-starts';
import { compareTimes } from './compare-times';
import { findMoved } from './find-moved';
import type { ItineraryChange } from './itinerary-change';

export interface CompareOptions {
  /** This car's start position, or its positions by section; 1 unless given. */
  position?: number | PositionsBySection;
  /** In the later version, where it is another. */
  positionAfter?: number | PositionsBySection;
}

/**
 * What changed from one version of an itinerary to the next, for one car: the weightiest first (stages, services, times,
 * fuel), then everything else. Points are matched by their printed name, services by their in-control. Nothing that
 * differs goes unmentioned; two equal versions give no change. Times are those of this car's start position.
 *
 * @example
 * compareItineraries(before, after, { position: 12 }).map(changeInWords) // ['SS7 Auwald (II) is cancelled: …', …]
 */
export function compareItineraries(
  before: Itinerary,
  after: Itinerary,
  options: CompareOptions = {},
): ItineraryChange[] {
  const positions = {
    before: bySection(options.position ?? 1),
    after: bySection(options.positionAfter ?? options.position ?? 1),
  };
  const { changes: services, told } = compareServices(before, after);
  const allPoints = comparePoints(before, after);
  const points = allPoints.filter(
    (change) =>
      !(change.kind === 'targetTime' && told.has(change.id)) && !followsCancelling(change, allPoints),
  );
  const isWeighty = ({ kind }: ItineraryChange) =>
    kind === 'stageCancelled' || kind === 'stageAdded' || kind === 'stageLength';
  const changes: ItineraryChange[] = [
    ...points.filter(isWeighty),
    ...services,
    ...compareTimes(before, after, positions),
    ...compareRefuels(before, after),
    ...compareStarts(before, after, positions),
    ...points.filter((change) => !isWeighty(change)),
    ...findMoved(before, after),
  ];
  if (before.roadTimedFrom !== after.roadTimedFrom) {
    changes.push({ kind: 'timedFrom', before: before.roadTimedFrom, after: after.roadTimedFrom });
  }
  if (before.timeZone !== after.timeZone) {
    changes.push({ kind: 'timeZone', before: before.timeZone, after: after.timeZone });
  }
  return changes;
}

/** Where a stage is cancelled nobody needs to be told that the later one no longer repeats it. */
function followsCancelling(change: ItineraryChange, all: readonly ItineraryChange[]): boolean {
  if (change.kind !== 'stageRepeat' || change.after !== null) return false;
  return all.some(
    ({ kind, ...each }) => kind === 'stageCancelled' && 'stageId' in each && each.stageId === change.before,
  );
}

function bySection(position: number | PositionsBySection): PositionsBySection {
  return typeof position === 'number' ? new Map([[1, position]]) : position;
}
