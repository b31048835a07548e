import { CAUSE_WORDS, OUTCOME_WORDS, SOURCE_WORDS } from '@halfshaft/itinerary';
import { HeadingHelp, type HeadingRow } from '../organiser/heading-help';

const choices = (words: Record<string, readonly string[]>) =>
  Object.values(words)
    .map(([first]) => first)
    .join(' · ');

const HEADINGS: HeadingRow[] = [
  { heading: 'Car', words: 'the number on the doors' },
  { heading: 'Class', words: 'may be left away' },
  { heading: 'What happened', words: `${choices(OUTCOME_WORDS)}; empty while nobody knows` },
  {
    heading: 'Where',
    words: 'in SS5 · after SS5 · after TC6: where it stopped, or where a car still running was seen last',
  },
  { heading: 'Cause', words: choices(CAUSE_WORDS) },
  { heading: 'Part', words: 'what broke, in a word or two' },
  { heading: 'Who says so', words: `${choices(SOURCE_WORDS)}; empty means unsure` },
  {
    heading: 'Back from section',
    words: 'of a car out for the day that came back; what happened then stands in a row below',
  },
];

/** The headings of the list and what may stand below them. */
export function ListHelp() {
  return <HeadingHelp caption="Headings of the list" rows={HEADINGS} />;
}
