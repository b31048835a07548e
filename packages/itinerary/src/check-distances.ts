import type { Draft, DraftPoint, DraftProblem } from './draft';
import { formatKilometres } from './format';
import { MAX_ROAD_METRES, MAX_STAGE_METRES } from './limits';

/** Distances: there, not negative, and of a size that can be driven. */
export function checkDistances(draft: Draft): DraftProblem[] {
  return draft.points.flatMap((point, pointIndex) => {
    const problem =
      point.kind === 'stage' ? checkStageMetres(point) : checkRoadMetres(point, pointIndex === 0);
    return problem ? [{ pointIndex, ...problem }] : [];
  });
}

type Unplaced = Omit<DraftProblem, 'pointIndex'>;

function checkStageMetres({ label, metres, unreadable }: DraftPoint): Unplaced | null {
  if (metres === null && unreadable.has('stageKm')) return null;
  if (metres === null || metres === 0) {
    return {
      key: 'stageKm',
      code: 'stage-km-missing',
      message: `${label} has no stage kilometres. Write its length, as 16.65.`,
    };
  }
  if (metres < 0) return negative('stageKm', label);
  if (!Number.isSafeInteger(metres)) return broken('stageKm', label);
  if (metres <= MAX_STAGE_METRES) return null;
  return {
    key: 'stageKm',
    code: 'stage-km-absurd',
    message: `${label} is ${formatKilometres(metres)} km long; no stage is longer than ${MAX_STAGE_METRES / 1000} km here. Check the decimal point.`,
  };
}

function checkRoadMetres(point: DraftPoint, isFirst: boolean): Unplaced | null {
  const { label, metres, unreadable } = point;
  if (metres === null) {
    const isPlain = point.roles.length === 1 && point.roles[0] === 'timeControl';
    if (!isPlain || isFirst || unreadable.has('roadKm')) return null;
    return {
      key: 'roadKm',
      code: 'road-km-missing',
      message: `${label} has no road kilometres, so 0 km are counted to it. Write them if the car drives there.`,
    };
  }
  if (metres < 0) return negative('roadKm', label);
  if (!Number.isSafeInteger(metres)) return broken('roadKm', label);
  if (metres > MAX_ROAD_METRES) {
    return {
      key: 'roadKm',
      code: 'road-km-absurd',
      message: `The road to ${label} is ${formatKilometres(metres)} km; no road is longer than ${MAX_ROAD_METRES / 1000} km here. Check the decimal point.`,
    };
  }
  if (!isFirst || metres === 0) return null;
  return {
    key: 'roadKm',
    code: 'road-km-before-start',
    message: `${label} is the first row, so its ${formatKilometres(metres)} road km are not counted. Add the row the car sets out from if they should be.`,
  };
}

function negative(key: 'stageKm' | 'roadKm', label: string): Unplaced {
  return {
    key,
    code: 'km-negative',
    message: `${label} has less than 0 km. Delete the minus sign or correct the figure.`,
  };
}

function broken(key: 'stageKm' | 'roadKm', label: string): Unplaced {
  return {
    key,
    code: 'number-malformed',
    message: `The distance of ${label} is not a whole number of metres. Enter it again in kilometres, as 16.65.`,
  };
}
