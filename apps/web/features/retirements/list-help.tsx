import { CAUSE_WORDS, OUTCOME_WORDS, SOURCE_WORDS } from '@halfshaft/itinerary';
import { Disclosure } from '@/components/disclosure';
import { Table, type TableColumn } from '@/components/table';

const choices = (words: Record<string, readonly string[]>) =>
  Object.values(words)
    .map(([first]) => first)
    .join(' · ');

interface Help {
  heading: string;
  words: string;
}

const HELP: Help[] = [
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
const COLUMNS: TableColumn<Help>[] = [
  { key: 'heading', heading: 'Heading', leads: true, cell: ({ heading }) => heading },
  { key: 'words', heading: 'What to write', cell: ({ words }) => words },
];

/** The headings of the list and what may stand below them. */
export function ListHelp() {
  return (
    <Disclosure summary="What to write">
      <Table
        caption="Headings of the list"
        captionHidden
        columns={COLUMNS}
        rows={HELP}
        rowKey={({ heading }) => heading}
      />
    </Disclosure>
  );
}
