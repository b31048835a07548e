import type { ItineraryProblem } from '@halfshaft/itinerary';
import { Notice } from '@/components/notice';
import { Sheet } from '@/components/sheet';
import { leftInWords } from './cells-to-mend';
import type { CheckedText } from './check-text';
import { MendPanel } from './mend-panel';
import { ReadResult } from './read-result';
import type { Mending } from './use-mending';

export interface LiveCheckProps {
  /** Null before the first check. */
  checked: CheckedText | null;
  mending: Mending;
  onGoToRow: (row: number) => void;
}

/** What the pasted text is understood as, and what is left to mend in it. */
export function LiveCheck({ checked, mending, onGoToRow }: LiveCheckProps) {
  return (
    <Sheet title="As it was read">
      <MendPanel
        words={summarise(checked)}
        problems={problemsOf(checked)}
        table={checked?.state === 'bad' || checked?.state === 'good' ? checked.table : null}
        mending={mending}
        onGoToRow={onGoToRow}
      />
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
      return `${leftInWords(checked.problems)}.`;
    case 'good':
      return checked.warnings.length === 0
        ? 'Nothing left to mend. Hold it beside the printed itinerary.'
        : `Nothing left to mend, ${leftInWords(checked.warnings)}: it can be saved as it is. Hold it beside the printed itinerary.`;
    case 'settings':
      return 'Not read yet.';
    default:
      return 'Paste the itinerary, and what was understood stands here.';
  }
}
