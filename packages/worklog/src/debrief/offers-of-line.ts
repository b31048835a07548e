import type { CarPlace, IncidentCode, JobCard } from '@halfshaft/lifing';
import { CARD_WORDS, INCIDENT_WORDS, meaningsIn, PLACE_WORDS } from './vocabulary';

/** What one line of a debrief may be taken down as. Only a person makes it so. */
export type DebriefOffer =
  | { kind: 'incident'; code: IncidentCode; place: CarPlace | null; words: string }
  /** A snag that asks for the look of a card. */
  | { kind: 'look'; cardId: string; cardName: string; place: CarPlace; words: string }
  | { kind: 'snag'; place: CarPlace; words: string };

/** A snag's words hold 300 UTF-16 units: twice this, where every sign takes two. */
const LONGEST_LINE = 150;
const LONGEST_WORDS = 300;

/**
 * The lines a scribe typed, each once, without empty ones. A line too long for a snag is cut between words.
 *
 * @example
 * debriefLines('pedal soft\n\n ford on SS3 ') // ['pedal soft', 'ford on SS3']
 */
export function debriefLines(text: string): string[] {
  const pieces = new RegExp(`\\S.{0,${LONGEST_LINE - 1}}(?=\\s|$)|\\S{1,${LONGEST_LINE}}`, 'gu');
  const lines = text.split(/[\r\n\u2028\u2029]+/).flatMap((line) => line.match(pieces) ?? []);
  return [...new Set(lines.map((line) => line.trim()))];
}

/**
 * What a line may be taken down as: what happened, a card of this car to look at, and always a plain snag.
 *
 * @example
 * offersOfLine('vibration left rear', []) // [{ kind: 'snag', place: 'rearLeft', words: 'vibration left rear' }]
 */
export function offersOfLine(
  line: string,
  cards: readonly Pick<JobCard, 'id' | 'name' | 'starterId' | 'place'>[],
): DebriefOffer[] {
  const [place = null] = meaningsIn(PLACE_WORDS, line);
  const starterIds = meaningsIn(CARD_WORDS, line).map((id) => `starter:${id}`);
  const named = cards.filter((card) => card.starterId !== null && starterIds.includes(card.starterId));
  return [
    ...meaningsIn(INCIDENT_WORDS, line).map(
      (code) => ({ kind: 'incident', code, place, words: line }) as const,
    ),
    ...named.map((card) => lookOffer(line, card, place)),
    { kind: 'snag', place: place ?? 'wholeCar', words: line },
  ];
}

function lookOffer(
  line: string,
  card: Pick<JobCard, 'id' | 'name' | 'place'>,
  place: CarPlace | null,
): DebriefOffer {
  const asked = `Look at “${card.name}”: ${line}`;
  // What the crew said is never cut for the name of a card.
  const words = asked.length <= LONGEST_WORDS ? asked : line;
  return { kind: 'look', cardId: card.id, cardName: card.name, place: place ?? card.place, words };
}
