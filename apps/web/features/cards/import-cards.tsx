'use client';

import { type CarRow, importTableInput, type Problem } from '@halfshaft/contract';
import type { CardTableProblem, JobCard } from '@halfshaft/lifing';
import { useMutation } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import { useForm } from 'react-hook-form';
import { Button } from '@/components/button';
import { Notice } from '@/components/notice';
import { Sheet } from '@/components/sheet';
import { Stack } from '@/components/stack';
import { api, problemOf } from '@/lib/api';
import { useKeptForm } from '@/lib/keep-typed';
import { contractResolver } from '../events/contract-resolver';
import { RestoredNotice } from '../events/restored-notice';
import { setFieldProblems } from '../events/set-field-problems';
import { SaveTrouble } from '../events/trouble';
import { selectRow } from '../itinerary/select-row';
import { CardTableCheck } from './card-table-check';
import { type CheckedCards, checkCardTable } from './check-card-table';
import styles from './import-cards.module.css';
import { ImportFields, type ImportForm } from './import-fields';
import { useCheckedCards } from './use-checked-cards';

const START: ImportForm = { text: '', how: 'add' };
const importForm = importTableInput.omit({ teamId: true, carId: true });

export interface ImportCardsProps {
  teamId: string;
  car: CarRow;
  before: readonly JobCard[];
  onSaved: () => void;
}

/** Paste or choose a file, see what it would do, save: all cards or none. */
export function ImportCards({ teamId, car, before, onSaved }: ImportCardsProps) {
  const { carId } = car;
  const form = useForm<ImportForm>({
    defaultValues: START,
    resolver: contractResolver<ImportForm>(importForm, (values) => values),
  });
  const kept = useKeptForm(`cards.table.${carId}`, form);
  const { text, how } = form.watch();
  const checked = useCheckedCards(text, how, before);
  const box = useRef<HTMLTextAreaElement>(null);
  const mutation = useMutation(api.card.importTable.mutationOptions());
  const [problem, setProblem] = useState<Problem | null>(null);
  const [refused, setRefused] = useState<{ text: string; problems: CardTableProblem[] } | null>(null);
  // What is said of a table counts for that table, and is gone with the next letter.
  const stopped: CheckedCards | null =
    refused?.text === text ? { state: 'bad', problems: refused.problems } : null;

  const save = form.handleSubmit(async (values) => {
    setProblem(null);
    // Typing may not have paused since the last letter, so it is read once more.
    const read = checkCardTable(values.text, values.how, before);
    if (read.state !== 'good') {
      return setRefused({ text: values.text, problems: read.state === 'bad' ? read.problems : [] });
    }
    try {
      const answer = await mutation.mutateAsync({ teamId, carId, ...values });
      if (!answer.ok) return setRefused({ text: values.text, problems: answer.problems });
      kept.clear();
      onSaved();
    } catch (error) {
      setProblem(problemOf(error));
      setFieldProblems(form, problemOf(error));
    }
  });

  return (
    <form noValidate onSubmit={save}>
      <div className={styles.halves}>
        <Sheet>
          <RestoredNotice
            restored={kept.restored}
            onStartAfresh={() => {
              form.reset(START);
              kept.clear();
            }}
          />
          <ImportFields form={form} boxRef={box} />
          {stopped ? <NotSaved isEmpty={text.trim() === ''} /> : null}
          <SaveTrouble problem={problem} />
          <Stack across>
            <Button
              type="submit"
              look="main"
              busy={mutation.isPending || form.formState.isSubmitting}
              busyWords="Saving …"
            >
              {saveWords(checked, how)}
            </Button>
          </Stack>
        </Sheet>
        <CardTableCheck
          checked={text.trim() === '' ? null : (stopped ?? checked)}
          onGoToRow={(row) => box.current && selectRow(box.current, row)}
        />
      </div>
    </form>
  );
}

function NotSaved({ isEmpty }: { isEmpty: boolean }) {
  return (
    <Notice kind="problem" title="Not saved" spoken>
      {isEmpty
        ? 'There is no table yet. Paste it above, or choose a file.'
        : 'The table has problems. They are listed under “As it was read”; mend them and save again.'}
    </Notice>
  );
}

function saveWords(checked: CheckedCards | null, how: ImportForm['how']): string {
  if (checked?.state !== 'good') return how === 'add' ? 'Add the cards' : 'Replace the cards';
  const count = checked.matched.cards.length;
  const cards = count === 1 ? '1 card' : `${count} cards`;
  return how === 'add' ? `Add ${cards}` : `Replace by ${cards}`;
}
