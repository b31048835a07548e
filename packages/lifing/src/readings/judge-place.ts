import type { ServiceId, ServiceWindow } from '@halfshaft/itinerary';
import type { LastDone } from '../model';
import { nameOfService } from '../name-of-service';
import { nextChance } from '../next-chance';
import type { CardQuestion } from '../questions';
import { wearBetween } from '../wear-between';
import type { ReadingReason, WearReading, WearSpec } from './model';
import { figuresOf, placeOfReading, valueInWords } from './value-in-words';
import { ownReadings, wearRate } from './wear-rate';

/** A place that is read, and what its readings may be compared with. */
export interface PlaceRead {
  position: string | null;
  group: string;
  part: string;
  /** When the part that is on went on there; left out, when the card was last done. */
  since?: LastDone;
}

export interface PlaceQuestion extends CardQuestion {
  /** The reading that limits the card; `card` is the one that puts it right (pads: change), `lastDone` when it was. */
  spec: WearSpec;
  readings: readonly WearReading[];
  cardRate: number | null;
  marginPerMille?: number;
  serviceName?: (id: ServiceId) => string;
}

export interface JudgedPlace {
  reason: ReadingReason;
  /** Expected at the next chance, negative when it does not last. */
  roomLeft: number;
}

/**
 * Whether what wears at one place reaches the next service where it can be put right. Only the lower limit counts where
 * there is one, else the upper. Null when the reading has no limit, or the place was not read on this part.
 */
export function judgePlace(place: PlaceRead, question: PlaceQuestion): JudgedPlace | null {
  const { spec } = question;
  const direction = spec.low === null ? 'up' : 'down';
  const limit = spec.low ?? spec.high;
  const rateQuestion = { ...question, ...place, direction, aheadMetres: 0 } as const;
  const last = ownReadings(rateQuestion).at(-1);
  if (limit === null || last === undefined) return null;
  const next = nextChance(question.card, question.services, question.serviceIndex);
  const aheadMetres = Math.max(0, wornAtChance(place, next, question) - last.wornMetres);
  const lossAhead = wearRate({ ...rateQuestion, aheadMetres })?.lossAhead ?? null;
  const room = direction === 'down' ? last.value - limit : limit - last.value;
  const bare = {
    code: codeOf(room, lossAhead),
    readingId: spec.id,
    position: place.position,
    value: last.value,
    limit,
    lossAhead,
    expected: lossAhead === null ? null : expectedOf(spec, last.value, lossAhead),
    nextChance: next?.id ?? null,
  };
  const words = inWords(bare, last, question);
  return { roomLeft: room - (lossAhead ?? 0), reason: { ...bare, words } };
}

/** Stage metres on the part where it must last to. */
function wornAtChance(place: PlaceRead, next: ServiceWindow | null, question: PlaceQuestion): number {
  const toIndex = next?.inIndex ?? question.itinerary.points.length - 1;
  return wearBetween({ ...question, lastDone: place.since ?? question.lastDone, toIndex }).stageMetres;
}

function codeOf(room: number, lossAhead: number | null): ReadingReason['code'] {
  if (room < 0) return 'outOfOrder';
  if (lossAhead === null) return 'notKnown';
  return room - lossAhead < 0 ? 'wearsOut' : 'holds';
}

function inWords(
  { position, value, limit, expected, nextChance: nextId, code }: Omit<ReadingReason, 'words'>,
  { readAt }: WearReading,
  question: PlaceQuestion,
): string {
  const { spec, services, serviceIndex, serviceName } = question;
  const isHere = readAt === services[serviceIndex]?.id;
  const where = readAt === undefined ? '' : isHere ? ' now' : ` at ${nameOfService(readAt, serviceName)}`;
  const read = `${placeOfReading(spec, position)}: ${valueInWords(spec, value ?? 0)}${where}`;
  const bounded = `limit ${figuresOf(spec, limit ?? 0)}`;
  if (code === 'outOfOrder') return `${read}, past its ${bounded}`;
  if (code === 'notKnown') return `${read}, ${bounded}: not known yet how fast it wears`;
  const next = nextId === null ? 'the finish' : nameOfService(nextId, serviceName);
  return `${read}, ${figuresOf(spec, expected ?? 0)} expected at ${next}, ${bounded}: ${code === 'holds' ? 'lasts' : "won't last"}`;
}

/** Nothing gets thinner than nothing. */
function expectedOf({ low }: WearSpec, value: number, lossAhead: number): number {
  if (low === null) return value + lossAhead;
  return value < 0 ? value - lossAhead : Math.max(0, value - lossAhead);
}
