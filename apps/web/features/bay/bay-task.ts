import type { ReasonNames } from '@halfshaft/lifing';
import {
  combinedReasonInWords,
  type JobCard,
  positionsOfCard,
  type ReadingSpec,
  type Verdict,
} from '@halfshaft/lifing';
import type { Task } from '@halfshaft/worklog';
import { CAR_PLACE_NAMES } from '../car-plan/car-places';
import { cardTitle } from '../cards/card-title';
import type { LastRead } from '../readings/last-read';
import { gravityInWords } from '../service/gravity-in-words';
import type { JudgedCard } from '../service/judge-visit';
import type { CarSnag } from '../service/snags-of-car';
import { placeInWords } from '../work/place-in-words';

/** A round, a job or a snag's repair as the bay shows it. */
export interface BayTask {
  task: Task;
  title: string;
  /** Minutes, people, place. */
  facts: string;
  /** Why now; empty for a snag. */
  why: string;
  verdict: Verdict | null;
  caution: string;
  instruction: string;
  /** Whether a new part may have gone on for a finding. Where doing the card fits one anyway there is nothing to ask. */
  asksNewPart: boolean;
  looks: JobCard['looks'];
  readings: readonly ReadingSpec[];
  /** What the readings say, beside `why`: sentences without a full stop. */
  said: readonly string[];
  /** What was read last, by `slotKey`. */
  lastRead: ReadonlyMap<string, LastRead>;
  /** Where something can be wrong; empty when it has but one place. */
  positions: readonly string[];
  /** Of the car plan, for a snag raised from it. */
  place: string;
}

export function bayTaskOfCard({ card, judged, task, lastRead }: JudgedCard, names: ReasonNames): BayTask {
  const [reason, ...others] = judged.reasons;
  const said = others.filter(
    ({ source, reason: other }) => source === 'reading' && !SAYS_NOTHING.has(other.code),
  );
  const minutes = `${Math.ceil(card.seconds / 60)} min`;
  return {
    task,
    title: cardTitle(card),
    facts: [
      card.people > 1 ? `${minutes} × ${card.people} people` : minutes,
      CAR_PLACE_NAMES[card.place],
    ].join(' · '),
    why: reason ? combinedReasonInWords(reason, names) : '',
    verdict: judged.verdict,
    caution: card.caution,
    instruction: card.instruction,
    asksNewPart: !card.fitsNewPart,
    looks: card.looks,
    readings: card.readings,
    said: said.map((each) => combinedReasonInWords(each, names)),
    lastRead,
    positions: positionsOfCard(card),
    place: card.place,
  };
}

/** Nothing a mechanic can act on. */
const SAYS_NOTHING: ReadonlySet<string> = new Set(['notHere', 'notKnown']);

export function bayTaskOfSnag({ snag, task }: CarSnag, raisedBy: string): BayTask {
  return {
    task,
    title: `Snag: ${snag.words}`,
    facts: [gravityInWords(snag), placeInWords(snag.place), `raised by ${raisedBy}`]
      .filter(Boolean)
      .join(' · '),
    why: '',
    verdict: null,
    caution: '',
    instruction: '',
    // A snag is no part, so no life begins with it.
    asksNewPart: false,
    looks: [],
    readings: [],
    said: [],
    lastRead: new Map(),
    positions: [],
    place: snag.place,
  };
}
