import type { Itinerary } from '@halfshaft/itinerary';
import type { ControlFigures } from '@halfshaft/reliability';
import { comesLateInWords, lostInWords } from './control-words';
import { beyondInWords } from './lateness-words';

export interface ControlSentencesProps {
  all: ControlFigures;
  itinerary: Itinerary;
  maxLateMinutes: number;
}

/** What times at controls that are no way out of service tell, in sentences; or which would tell something. */
export function ControlSentences({ all, itinerary, maxLateMinutes }: ControlSentencesProps) {
  const sentences = [comesLateInWords(all), lostInWords(all), beyondInWords(all, maxLateMinutes)];
  if (all.arrivals === 0) {
    const first = itinerary.points.filter(({ kind }) => kind === 'control').slice(0, 3);
    const ids = first.map(({ id }) => id).join(', ');
    sentences.push(`With times at all of them, ${ids} …, it can be told on which way minutes are lost.`);
  }
  return <p>{sentences.filter((sentence) => sentence !== null).join(' ')}</p>;
}
