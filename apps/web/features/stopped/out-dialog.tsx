import { OUT_CAUSES, outCauseInWords } from '@halfshaft/worklog';
import { useState } from 'react';
import { ChoiceGroup } from '@/components/choice-group';
import { SelectField } from '@/components/select-field';
import { capitalise } from '@/lib/capitalise';
import * as z from '@/lib/zod';
import type { BayDialogProps } from '../bay/bay-dialog';
import { fittableCards } from '../bay/fittable-cards';
import { RecordingDialog } from '../bay/recording-dialog';
import { stageIdsBack } from '../bay/stages-before';
import { useDraft } from '../bay/use-draft';
import { WhenAndWords } from '../bay/when-and-words';
import { factPlaceOf } from '../bay/when-field';
import { newId } from '../work/new-id';

const HOW_LONG = ['day', 'good'] as const;
const shape = z.object({
  howLong: z.enum(HOW_LONG).nullable(),
  cause: z.enum(OUT_CAUSES).nullable(),
  /** Whose part it was; empty: none, or not known. */
  cardId: z.string(),
  words: z.string(),
  /** A stage, or empty for here; null: not chosen yet. */
  stageId: z.string().nullable(),
});
const EMPTY = { howLong: null, cause: null, cardId: '', words: '', stageId: null };
const HOW_LONG_CHOICES = [
  { value: 'day', label: 'For the day', hint: 'It may start again on the next leg.' },
  { value: 'good', label: 'For good' },
];
const CAUSES = OUT_CAUSES.map((value) => ({ value, label: capitalise(outCauseInWords(value)) }));

/** Out for the day or for good, and why. Only the first must be said: a cause may be put right later. */
export function OutDialog({ work, visit, by, onClose }: BayDialogProps) {
  const { entry, service } = visit;
  const [draft, setDraft, clearDraft] = useDraft(`out.${entry.entryId}`, shape, EMPTY);
  const [asked, setAsked] = useState(false);
  const stages = stageIdsBack(work.replica, work.state, visit);
  const stageId = draft.stageId ?? stages[0] ?? '';

  function finish() {
    if (draft.howLong === null) return setAsked(true);
    const cardId = draft.cause === 'mechanical' && draft.cardId !== '' ? draft.cardId : null;
    const said = { cause: draft.cause, cardId, words: draft.words.trim() };
    const fact = { kind: 'out' as const, forDay: draft.howLong === 'day', ...said };
    const at = factPlaceOf(stageId, service.id);
    work.act('recordFact', { factId: newId(), entryId: entry.entryId, at, fact }, by);
    clearDraft();
    onClose();
  }

  return (
    <RecordingDialog title="The car is out" onClose={onClose} goOn={{ words: 'Write it down', act: finish }}>
      <ChoiceGroup
        label="For how long?"
        choices={HOW_LONG_CHOICES}
        chosen={draft.howLong === null ? [] : [draft.howLong]}
        error={asked && draft.howLong === null ? 'Choose for the day or for good.' : undefined}
        onChange={({ target }) => setDraft({ ...draft, howLong: shape.shape.howLong.parse(target.value) })}
      />
      <ChoiceGroup
        label="Why?"
        optional
        across
        choices={CAUSES}
        chosen={draft.cause === null ? [] : [draft.cause]}
        onChange={({ target }) => setDraft({ ...draft, cause: shape.shape.cause.parse(target.value) })}
      />
      {draft.cause === 'mechanical' ? (
        <SelectField
          label="A part of which job?"
          options={[
            { value: '', label: 'None of these, or not known' },
            ...fittableCards(entry).map(({ id, name }) => ({ value: id, label: name })),
          ]}
          value={draft.cardId}
          onChange={({ target }) => setDraft({ ...draft, cardId: target.value })}
        />
      ) : null}
      <WhenAndWords
        {...{ work, visit, stages, stageId }}
        onChooseStage={(chosen) => setDraft({ ...draft, stageId: chosen })}
        words={draft.words}
        onType={(words) => setDraft({ ...draft, words })}
      />
    </RecordingDialog>
  );
}
