import type { MatchedCards } from '@halfshaft/lifing';
import { Notice } from '@/components/notice';
import { Sheet } from '@/components/sheet';
import { Table, type TableColumn } from '@/components/table';
import { CAR_PLACE_NAMES } from '../car-plan/car-places';
import { ProblemList } from '../itinerary/problem-list';
import { dueInWords, workInWords } from './card-words';
import { type CheckedCards, importInWords } from './check-card-table';

export interface CardTableCheckProps {
  /** Null before the first check. */
  checked: CheckedCards | null;
  onGoToRow: (row: number) => void;
}

/** What the pasted table is understood as, or what stands in the way. Nothing is saved by looking. */
export function CardTableCheck({ checked, onGoToRow }: CardTableCheckProps) {
  return (
    <Sheet title="As it was read">
      <p role="status">{summarise(checked)}</p>
      {checked?.state === 'bad' ? (
        <ProblemList
          problems={checked.problems.map((problem) => ({ ...problem, severity: 'error' as const }))}
          onGoToRow={onGoToRow}
        />
      ) : null}
      {checked?.state === 'good' ? (
        <>
          <SameNames names={checked.sameName} />
          <Removed matched={checked.matched} />
          <ReadCards matched={checked.matched} />
        </>
      ) : null}
    </Sheet>
  );
}

function summarise(checked: CheckedCards | null): string {
  switch (checked?.state) {
    case 'bad': {
      const count = checked.problems.length;
      return `${count === 1 ? '1 problem' : `${count} problems`}. Press one to go to its row. Nothing is saved before all are mended.`;
    }
    case 'good':
      return `No problem found. ${importInWords(checked.matched)}`;
    default:
      return 'Paste a table or choose a file, and the cards it holds stand here.';
  }
}

function SameNames({ names }: { names: readonly string[] }) {
  if (names.length === 0) return null;
  return (
    <Notice kind="warning" title="Already on this car">
      {`${names.map((name) => `“${name}”`).join(', ')}: there would then be two of each. To change cards that are there, choose to replace.`}
    </Notice>
  );
}

function Removed({ matched: { removed } }: { matched: MatchedCards }) {
  if (removed.length === 0) return null;
  return (
    <Notice kind="warning" title="Will be removed">
      {`${removed.map((card) => `“${card.name}”`).join(', ')}. What was done and written down so far stays in the log.`}
    </Notice>
  );
}

type Row = MatchedCards['cards'][number];
const COLUMNS: TableColumn<Row>[] = [
  { key: 'name', heading: 'Card', leads: true, cell: ({ card }) => card.name },
  { key: 'place', heading: 'Where', cell: ({ card }) => CAR_PLACE_NAMES[card.place] },
  { key: 'due', heading: 'How often', cell: ({ card }) => dueInWords(card) },
  { key: 'work', heading: 'Time', cell: ({ card }) => workInWords(card) },
  { key: 'what', heading: 'Becomes', cell: ({ id }) => (id === null ? 'new' : 'same card, as here') },
];

function ReadCards({ matched }: { matched: MatchedCards }) {
  return (
    <Table
      caption="Cards of the table"
      columns={COLUMNS}
      rows={matched.cards}
      rowKey={(_row, index) => String(index)}
    />
  );
}
