import type { ItineraryProblem } from '@halfshaft/itinerary';
import { Notice } from '@/components/notice';
import { Sheet } from '@/components/sheet';
import type { CheckedText } from './check-text';
import { ProblemList } from './problem-list';
import { countInWords } from './problem-words';
import { ReadResult } from './read-result';

export interface LiveCheckProps {
  /** Null before the first check. */
  checked: CheckedText | null;
  onGoToRow: (row: number) => void;
}

/** What the pasted text is understood as, or what stands in the way. */
export function LiveCheck({ checked, onGoToRow }: LiveCheckProps) {
  const problems = problemsOf(checked);
  return (
    <Sheet title="As it was read">
      <p role="status">{summarise(checked)}</p>
      {problems.length > 0 ? <ProblemList problems={problems} onGoToRow={onGoToRow} /> : null}
      {checked?.state === 'settings' ? (
        <Notice kind="warning">
          The table cannot be read before the first day, the time zone and the settings under “More” are
          right.
        </Notice>
      ) : null}
      {checked?.state === 'good' ? <ReadResult itinerary={checked.itinerary} /> : null}
    </Sheet>
  );
}

function problemsOf(checked: CheckedText | null): readonly ItineraryProblem[] {
  if (checked?.state === 'bad') return checked.problems;
  return checked?.state === 'good' ? checked.warnings : [];
}

function summarise(checked: CheckedText | null): string {
  switch (checked?.state) {
    case 'bad':
      return `${countInWords(checked.problems)}. Press one to go to its row.`;
    case 'good':
      return checked.warnings.length === 0
        ? 'No problem found. Hold it beside the printed itinerary.'
        : `${countInWords(checked.warnings)}: it can be saved as it is. Hold it beside the printed itinerary.`;
    case 'settings':
      return 'Not read yet.';
    default:
      return 'Paste the itinerary, and what was understood stands here.';
  }
}
