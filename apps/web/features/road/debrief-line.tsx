import { incidentInWords, type JobCard } from '@halfshaft/lifing';
import { type DebriefOffer, offersOfLine, type WorkState } from '@halfshaft/worklog';
import { Button } from '@/components/button';
import { Stack } from '@/components/stack';
import { placeInWords } from '../work/place-in-words';
import styles from './road.module.css';

interface DebriefLineProps {
  line: string;
  cards: readonly JobCard[];
  state: WorkState;
  taken: Readonly<Record<string, string>>;
  onTake: (key: string, offer: DebriefOffer) => void;
}

/** One thing the crew said, and what it may be taken down as. What was taken is told until it is undone. */
export function DebriefLine({ line, cards, state, taken, onTake }: DebriefLineProps) {
  const offers = offersOfLine(line, cards).map((offer) => ({ offer, key: `${subjectOf(offer)}~${line}` }));
  const stands = (key: string) => isThere(state, taken[key]);
  const done = offers.filter(({ key }) => stands(key));
  return (
    <li className={styles.line}>
      <p className={styles.said}>{line}</p>
      <p aria-live="polite">{done.map(({ offer }) => `Taken down: ${offerInWords(offer)}.`).join(' ')}</p>
      <Stack gap="small" across>
        {offers
          .filter(({ key }) => !stands(key))
          .map(({ offer, key }) => (
            <Button
              key={key}
              onClick={() => onTake(key, offer)}
              aria-label={`${offerInWords(offer)}: ${line}`}
            >
              {offerInWords(offer)}
            </Button>
          ))}
      </Stack>
    </li>
  );
}

/** Undone, or thrown away before it was sent: offered again. */
function isThere(state: WorkState, id: string | undefined): boolean {
  if (id === undefined) return false;
  const made = state.snags.get(id) ?? state.facts.get(id);
  return made !== undefined && !made.withdrawn;
}

function subjectOf(offer: DebriefOffer): string {
  if (offer.kind === 'incident') return offer.code;
  return offer.kind === 'look' ? offer.cardId : offer.kind;
}

function offerInWords(offer: DebriefOffer): string {
  if (offer.kind === 'incident') return `It happened: ${incidentInWords(offer.code)}`;
  if (offer.kind === 'look') return `Look at “${offer.cardName}”`;
  return `Snag, ${placeInWords(offer.place).toLowerCase()}`;
}
