import { issueBulletinInput } from '@halfshaft/contract';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { useForm } from 'react-hook-form';
import { Button } from '@/components/button';
import { Sheet } from '@/components/sheet';
import { TextArea } from '@/components/text-area';
import { api, problemOf } from '@/lib/api';
import { useKeptForm } from '@/lib/keep-typed';
import { contractResolver } from '../events/contract-resolver';
import type { BulletinDraft } from '../organiser/organiser-event';
import { savedInWords } from './bulletin-words';
import styles from './bulletins.module.css';
import { IssueDialog } from './issue-dialog';
import { SentenceList } from './sentence-list';

interface NoteForm {
  note: string;
}
const noteForm = issueBulletinInput.pick({ note: true });

export interface DraftSheetProps {
  own: { organiserId: string; publishedEventId: string };
  /** That it will have. */
  number: number;
  draft: BulletinDraft;
  timeZone: string;
}

/** The draft of the next bulletin: what it changes, a note, and the button that issues it. */
export function DraftSheet({ own, number, draft, timeZone }: DraftSheetProps) {
  const { itineraryNumber, changes, savedAt } = draft;
  const form = useForm<NoteForm>({
    defaultValues: { note: '' },
    resolver: contractResolver<NoteForm>(noteForm, (values) => values),
  });
  const kept = useKeptForm(`bulletin.${own.publishedEventId}.${number}`, form);
  const [asking, setAsking] = useState(false);
  const queries = useQueryClient();
  const issue = useMutation(
    api.bulletin.issue.mutationOptions({
      onSuccess: () => {
        setAsking(false);
        kept.clear();
        const { organiserId } = own;
        return Promise.all([
          queries.invalidateQueries({ queryKey: api.bulletin.list.queryKey(own) }),
          queries.invalidateQueries({ queryKey: api.organiser.events.queryKey({ organiserId }) }),
        ]);
      },
      // Another person of the organiser may have saved or issued meanwhile.
      onError: () => queries.invalidateQueries({ queryKey: api.bulletin.list.queryKey(own) }),
    }),
  );
  return (
    <Sheet title={`Bulletin ${number} is a draft`}>
      <p>
        {savedInWords(savedAt, timeZone)}. No team sees it yet. Against what teams have now it changes, for
        the car in start position 1:
      </p>
      {changes.length > 0 ? (
        <SentenceList sentences={changes} />
      ) : (
        <p>Nothing in the itinerary. With a note it can be issued all the same.</p>
      )}
      <form noValidate className={styles.form} onSubmit={form.handleSubmit(() => setAsking(true))}>
        <TextArea
          label="Note to the teams"
          hint="What the itinerary does not say: why, and where to ask."
          optional
          error={form.formState.errors.note?.message}
          {...form.register('note')}
        />
        <Button type="submit" look="main">
          Issue bulletin {number}
        </Button>
      </form>
      <IssueDialog
        open={asking}
        number={number}
        changes={changes.length}
        busy={issue.isPending}
        problem={issue.error ? problemOf(issue.error) : null}
        onClose={() => setAsking(false)}
        onIssue={() => issue.mutate({ ...own, itineraryNumber, note: form.getValues('note').trim() })}
      />
    </Sheet>
  );
}
