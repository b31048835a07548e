import type { ControlId } from '../model';
import { latenessAlong } from './lateness-along';
import type { LatenessQuestion } from './lateness-question';
import { resetAt } from './lateness-resets';
import type { LatenessReset } from './penalty-rules';

/** A stretch of one section without a reset inside. */
export interface MinutesToLose {
  section: number;
  /** Indexes into `Itinerary.points`: controls and stages ahead, the first and the last of the stretch. */
  fromIndex: number;
  toIndex: number;
  /** Minutes of our own that may still be lost here before a maximum is passed; null where there is no maximum. */
  minutes: number | null;
  /** Of those, the most at any one control. */
  atOneControl: number | null;
  /** Which maximum is the nearer one. */
  limitedBy: 'inSection' | 'inTotal' | null;
  /** Where the total goes back to nothing next; null where it does not any more. */
  resetsAt: { pointIndex: number; id: ControlId; kind: LatenessReset } | null;
}

/**
 * How many minutes may still be lost, for each stretch ahead of the last control written, and where the count begins
 * anew. Minutes lost in one stretch are missing in the next one of the same count: this is what is left if nothing is
 * lost in between. Throws as `latenessAlong` does.
 *
 * @example
 * minutesToLose(question)[0] // { section: 2, minutes: 18, limitedBy: 'inTotal', resetsAt: { id: 'TC6B', kind: 'regroup', … }, … }
 */
export function minutesToLose(question: LatenessQuestion): MinutesToLose[] {
  const { itinerary, rules } = question;
  const last = latenessAlong(question).at(-1);
  let { inTotal, inSection, section } = {
    inTotal: last?.totalMinutes ?? 0,
    inSection: last?.sectionMinutes ?? 0,
    section: last?.section ?? itinerary.points[0]?.section ?? 1,
  };
  const start = (last?.pointIndex ?? -1) + 1;
  if (last && resetAt(itinerary, last.pointIndex, rules)?.when === 'afterIt') inTotal = 0;
  const stretches: MinutesToLose[] = [];
  let isOpen = false;
  itinerary.points.slice(start).forEach((point, offset) => {
    const index = start + offset;
    const reset = resetAt(itinerary, index, rules);
    if (reset?.when === 'beforeIt') inTotal = 0;
    if (point.section !== section) inSection = 0;
    const current = stretches.at(-1);
    if (isOpen && current && reset?.when !== 'beforeIt' && point.section === section) current.toIndex = index;
    else
      stretches.push({
        ...left(question, inTotal, inSection),
        section: point.section,
        fromIndex: index,
        toIndex: index,
        resetsAt: nextReset(question, index),
      });
    section = point.section;
    isOpen = reset?.when !== 'afterIt';
    if (!isOpen) inTotal = 0;
  });
  return stretches;
}

function left({ rules }: LatenessQuestion, inTotal: number, inSection: number) {
  const total =
    rules.maxLateMinutesInTotal === null ? null : Math.max(0, rules.maxLateMinutesInTotal - inTotal);
  const section =
    rules.maxLateMinutesInSection === null ? null : Math.max(0, rules.maxLateMinutesInSection - inSection);
  const minutes = smaller(total, section);
  const limitedBy =
    minutes === null ? null : minutes === total ? ('inTotal' as const) : ('inSection' as const);
  return { minutes, limitedBy, atOneControl: smaller(minutes, rules.maxLateMinutesAtControl) };
}

function smaller(one: number | null, other: number | null): number | null {
  if (one === null || other === null) return one ?? other;
  return Math.min(one, other);
}

/** From the stretch that begins at `from`: a reset before its own first point lies behind already. */
function nextReset({ itinerary, rules }: LatenessQuestion, from: number): MinutesToLose['resetsAt'] {
  for (let index = from; index < itinerary.points.length; index += 1) {
    const reset = resetAt(itinerary, index, rules);
    const point = itinerary.points[index];
    if (reset && point && (index > from || reset.when === 'afterIt'))
      return { pointIndex: index, id: point.id, kind: reset.kind };
  }
  return null;
}
