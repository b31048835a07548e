import type { VisitProposal, VisitRow } from '@halfshaft/bayplan';
import type { ReasonNames } from '@halfshaft/lifing';
import { combinedReasonInWords, type JobCard } from '@halfshaft/lifing';
import type { PersonId, SnagId, Task } from '@halfshaft/worklog';
import { cardTitle } from '../cards/card-title';
import type { LastRead } from '../readings/last-read';
import type { JudgedCard } from '../service/judge-visit';
import type { CarSnag } from '../service/snags-of-car';
import { type Share, shareOut } from '../visit/share-out';
import { placeInWords } from '../work/place-in-words';

/** One line of the sheet: a round or job, with a name short enough to be read out over a paper. */
export interface SheetRow {
  /** Of the car's list of cards, so that it stays the same when the verdicts change after printing. "S2": a snag. */
  number: string;
  title: string;
  task: Task;
  /** Null for a snag. */
  card: JobCard | null;
  /** Why now; empty where it is simply due each time. */
  reason: string;
  /** What was read last at each place, by `slotKey`. */
  lastRead: ReadonlyMap<string, LastRead>;
  seconds: number;
  people: number;
  mustDo: boolean;
  /** Whether it will be asked for at this event; a part that outlives it need not stand on the paper. */
  fallsDue: boolean;
  /** When and after whom the plan has it, in seconds from the in-time; null where there is no plan. */
  planned: VisitRow | null;
}

/** What the whole car waits for and no card stands for: nothing to record. */
export interface CarStep {
  words: string;
  planned: VisitRow;
}

/** What is said of a card that nothing asks for in the rest of the event. */
const OUTLIVES: readonly string[] = ['lasts', 'notHere'];

export type VisitPlan = Extract<VisitProposal, { kind: 'plan' }>;

/** What one person does at this service. */
export interface PersonShare extends Share<SheetRow> {
  personId: PersonId;
  steps: CarStep[];
}

export interface SheetOfService {
  shares: PersonShare[];
  /** What the plan leaves, each with the reason. */
  left: { row: SheetRow; because: string }[];
  /** Nobody's in particular: how long a repair takes is not known. */
  snags: SheetRow[];
  canWait: SheetRow[];
}

interface SheetQuestion {
  /** All cards as they stand at this service. */
  cards: readonly JudgedCard[];
  /** The order of the car's own list. */
  cardIds: readonly string[];
  snags: readonly CarSnag[];
  /** In the order raised: a snag raised after printing gets the next number and moves none. */
  snagIds: readonly SnagId[];
  people: readonly PersonId[];
  /** Null: shared out by minutes only. */
  plan: VisitPlan | null;
  names: ReasonNames;
}

/**
 * The work of one service shared out among named people: as the plan has it, in its order; without one do now first, by
 * minutes. What was closed meanwhile keeps its line and its person, so that a sheet printed before and a screen opened after
 * show the same rows in the same order.
 *
 * Throws when no person is named.
 */
export function sheetRows(question: SheetQuestion): SheetOfService {
  const { cards, cardIds, snags, snagIds, people, plan, names } = question;
  const rowOf = (each: JudgedCard) =>
    rowOfCard(each, { place: cardIds.indexOf(each.card.id) + 1, names, plan });
  const due = cards
    .filter(({ judged }) => judged.verdict !== 'leave')
    .map(rowOf)
    .sort((one, other) => Number(other.mustDo) - Number(one.mustDo) || closing(one) - closing(other));
  return {
    shares: plan ? people.map((personId) => planned(due, plan, personId)) : byMinutes(due, people),
    left: (plan?.left ?? []).flatMap(({ id, sentence: because }) => {
      const row = due.find(({ card }) => card?.id === id);
      return row ? [{ row, because }] : [];
    }),
    snags: snags.map((each) => rowOfSnag(each, snagIds.indexOf(each.snag.id) + 1)),
    canWait: cards.filter(({ judged }) => judged.verdict === 'leave').map(rowOf),
  };
}

function byMinutes(due: readonly SheetRow[], people: readonly PersonId[]): PersonShare[] {
  return shareOut(due, people.length).flatMap((share, index) => {
    const personId = people[index];
    return personId === undefined ? [] : [{ ...share, personId, steps: [] }];
  });
}

function planned(due: readonly SheetRow[], { rows }: VisitPlan, personId: PersonId): PersonShare {
  const own = rows.filter(({ people }) => people.includes(personId));
  const work = own.flatMap(({ id }) => due.find(({ card }) => card?.id === id) ?? []);
  const steps = own.flatMap((each) =>
    each.step === null ? [] : [{ words: STEP_WORDS[each.step], planned: each }],
  );
  return { personId, work, steps, seconds: work.reduce((sum, { seconds }) => sum + seconds, 0) };
}

const STEP_WORDS = { up: 'Car up on stands, chocked', down: 'Wheels on, car down' };

interface Placing {
  /** In the car's own list. */
  place: number;
  names: ReasonNames;
  plan: VisitPlan | null;
}

function rowOfCard({ card, judged, task, lastRead }: JudgedCard, { place, names, plan }: Placing): SheetRow {
  const [first] = judged.reasons;
  const isEachTime = first?.source === 'interval' && first.reason.code === 'past' && first.reason.limit === 1;
  return {
    number: String(place),
    title: cardTitle(card),
    task,
    card,
    lastRead,
    reason: first === undefined || isEachTime ? '' : combinedReasonInWords(first, names),
    seconds: card.seconds,
    people: card.people,
    mustDo: judged.verdict === 'doNow',
    fallsDue: judged.reasons.some(({ reason }) => !OUTLIVES.includes(reason.code)),
    planned: plan?.rows.find(({ id }) => id === card.id) ?? null,
  };
}

function rowOfSnag({ snag, task }: CarSnag, place: number): SheetRow {
  const title = `${placeInWords(snag.place)}: ${snag.words}`;
  const plain = {
    card: null,
    reason: '',
    lastRead: new Map<string, LastRead>(),
    seconds: 0,
    people: 1,
    planned: null,
  };
  return { number: `S${place}`, title, task, mustDo: snag.urgent, fallsDue: true, ...plain };
}

/** What is checked and signed stands last, then what concerns the whole car (common practice, no source). */
function closing({ card }: SheetRow): number {
  if (card?.place === 'wholeCar') return 2;
  return card?.needsSignature ? 1 : 0;
}

/** The others who are at a row, besides one person. */
export function partnersAt(row: SheetRow, personId: PersonId, shares: readonly PersonShare[]): PersonId[] {
  return shares
    .filter((share) => share.personId !== personId && share.work.includes(row))
    .map((share) => share.personId);
}

/** Rounds whose looks stand on the paper already, with the number of the row that has them. */
export function rowsWithSameLooks(shares: readonly PersonShare[]): Map<SheetRow, string> {
  const firstWith = new Map<string, string>();
  const same = new Map<SheetRow, string>();
  for (const row of rowsByFirst(shares).flatMap(({ rows }) => rows)) {
    if (!row.card || row.card.looks.length === 0) continue;
    const looks = JSON.stringify(row.card.looks.map(({ words }) => words));
    const first = firstWith.get(looks);
    if (first === undefined) firstWith.set(looks, row.number);
    else same.set(row, first);
  }
  return same;
}

/** All rows once, in the order of the paper: person after person, each row with the first who has it. */
export function rowsByFirst(shares: readonly PersonShare[]): { personId: PersonId; rows: SheetRow[] }[] {
  const seen = new Set<SheetRow>();
  return shares.map(({ personId, work }) => {
    const rows = work.filter((row) => !seen.has(row));
    for (const row of rows) seen.add(row);
    return { personId, rows };
  });
}
