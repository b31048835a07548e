import { type Itinerary, type ServiceWindow, type StagePoint, segmentsBetween } from '@halfshaft/itinerary';
import { type LabelSlot, placeLabels } from './place-labels';

/** Left and right of the line, so that the ends and their words are not cut off. */
const MARGIN = 14;
/** A service is no distance: on the line it is a gap just wide enough for its letter and minutes. */
export const SERVICE_GAP = 66;
const LEG_GAP = 44;

export interface StripPiece {
  kind: 'road' | 'stage';
  fromX: number;
  toX: number;
}

export interface StripStage extends LabelSlot {
  stage: StagePoint;
}

export interface StripGap {
  kind: 'service' | 'leg';
  /** Only for a service. */
  service: ServiceWindow | null;
  /** The leg that begins after it. */
  leg: number;
  metres: number;
  fromX: number;
  toX: number;
}

export interface StripLayout {
  width: number;
  fromMetres: number;
  toMetres: number;
  pieces: StripPiece[];
  stages: StripStage[];
  gaps: StripGap[];
  pixelsPerMetre: number;
  /**
   * Where a distance stands. At a gap `before` is its left edge and `after` its right one. Distances outside the drawn
   * part stand at its ends.
   */
  toX: (metres: number, side: 'before' | 'after') => number;
}

export interface StripRange {
  itinerary: Itinerary;
  services: readonly ServiceWindow[];
  /** Indexes into `Itinerary.points`, both drawn. */
  fromIndex: number;
  toIndex: number;
  /** Pixels there are. */
  width: number;
  /** The drawing grows wider than `width` rather than go below this. */
  leastPixelsPerKilometre: number;
}

/**
 * Lays a part of the event out along one line: every kilometre equally long, services and the start of a leg as gaps.
 * A gap at the very beginning or end of the part is drawn when its service lies inside it.
 */
export function layoutStrip(range: StripRange): StripLayout {
  const { itinerary, fromIndex, toIndex } = range;
  const fromMetres = sumMetres(itinerary, 0, fromIndex);
  const toMetres = fromMetres + sumMetres(itinerary, fromIndex, toIndex);
  const bare = findGaps(range);
  const free = range.width - 2 * MARGIN - bare.reduce((sum, gap) => sum + widthOf(gap), 0);
  const metres = Math.max(1, toMetres - fromMetres);
  const pixelsPerMetre = Math.max(free / metres, range.leastPixelsPerKilometre / 1000);

  let shift = MARGIN;
  const gaps = bare.map((gap): StripGap => {
    const fromX = shift + (gap.metres - fromMetres) * pixelsPerMetre;
    shift += widthOf(gap);
    return { ...gap, fromX, toX: fromX + widthOf(gap) };
  });

  function toX(at: number, side: 'before' | 'after'): number {
    const inside = Math.min(Math.max(at, fromMetres), toMetres);
    const passed = gaps.filter((gap) => gap.metres < inside || (side === 'after' && gap.metres === inside));
    const gapPixels = passed.reduce((sum, gap) => sum + widthOf(gap), 0);
    return MARGIN + gapPixels + (inside - fromMetres) * pixelsPerMetre;
  }

  const { pieces, stages } = findPieces(range, fromMetres, toX);
  const blocked = gaps.map((gap) => ({ fromX: gap.fromX, toX: gap.toX }));
  return {
    width: Math.ceil(toX(toMetres, 'after') + MARGIN),
    fromMetres,
    toMetres,
    pieces,
    stages: placeLabels(stages, blocked),
    gaps,
    pixelsPerMetre,
    toX,
  };
}

function widthOf(gap: { kind: StripGap['kind'] }): number {
  return gap.kind === 'service' ? SERVICE_GAP : LEG_GAP;
}

function sumMetres(itinerary: Itinerary, fromIndex: number, toIndex: number): number {
  return segmentsBetween(itinerary, fromIndex, toIndex).reduce((sum, segment) => sum + segment.metres, 0);
}

type BareGap = Omit<StripGap, 'fromX' | 'toX'>;

function findGaps({ itinerary, services, fromIndex, toIndex }: StripRange): BareGap[] {
  const servicesByIndex = new Map(services.map((service) => [service.inIndex, service]));
  const gaps: BareGap[] = [];
  let metres = sumMetres(itinerary, 0, fromIndex);
  let leg: number | null = null;
  itinerary.points.slice(fromIndex, toIndex + 1).forEach((point, offset) => {
    if (point.kind === 'control' && offset > 0) metres += point.roadMetres;
    if (leg !== null && point.leg > leg) gaps.push({ kind: 'leg', service: null, leg: point.leg, metres });
    leg = point.leg;
    const service = servicesByIndex.get(fromIndex + offset);
    if (service) gaps.push({ kind: 'service', service, leg: point.leg, metres });
    if (point.kind === 'stage' && fromIndex + offset < toIndex) metres += point.stageMetres;
  });
  return gaps;
}

function findPieces(range: StripRange, fromMetres: number, toX: StripLayout['toX']) {
  const pieces: StripPiece[] = [];
  const stages: { fromX: number; toX: number; text: string; stage: StagePoint }[] = [];
  let metres = fromMetres;
  for (const segment of segmentsBetween(range.itinerary, range.fromIndex, range.toIndex)) {
    const start = metres;
    metres += segment.metres;
    if (segment.kind === 'halt' || segment.metres === 0) continue;
    const piece: StripPiece = { kind: segment.kind, fromX: toX(start, 'after'), toX: toX(metres, 'before') };
    pieces.push(piece);
    const point = range.itinerary.points[segment.fromIndex];
    if (segment.kind === 'stage' && point?.kind === 'stage') {
      stages.push({ fromX: piece.fromX, toX: piece.toX, text: point.id, stage: point });
    }
  }
  return { pieces, stages };
}
