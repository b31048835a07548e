import { Button, type ButtonLook } from '@/components/button';
import { Notice } from '@/components/notice';
import { problemOf } from '@/lib/api';
import { SaveTrouble } from '../events/trouble';
import { ProblemList } from '../itinerary/problem-list';
import { selectRow } from '../itinerary/select-row';
import type { OpenListForm } from './use-list-form';

export interface ListEndProps {
  list: Pick<OpenListForm, 'box' | 'problems' | 'error' | 'isSaving' | 'outcome'>;
  saveWords: string;
  look?: ButtonLook;
}

/** Below the box of a list: what is wrong by row and column, the button, and what was saved. */
export function ListEnd({ list, saveWords, look = 'plain' }: ListEndProps) {
  const { box, problems, error, isSaving, outcome } = list;
  return (
    <>
      {problems.length > 0 ? (
        <Notice kind="problem" title="Not saved" spoken>
          <ProblemList problems={problems} onGoToRow={(row) => box.current && selectRow(box.current, row)} />
        </Notice>
      ) : null}
      <SaveTrouble problem={error ? problemOf(error) : null} />
      <Button type="submit" look={look} busy={isSaving} busyWords="Saving …">
        {saveWords}
      </Button>
      {outcome === null ? null : (
        <Notice title="Saved" spoken>
          {outcome}
        </Notice>
      )}
    </>
  );
}
