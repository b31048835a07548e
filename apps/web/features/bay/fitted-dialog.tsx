import type { StageId } from '@halfshaft/itinerary';
import { CORNERS } from '@halfshaft/lifing';
import { type CardId, type CarFact, FITTED_REASONS, fittedReasonInWords } from '@halfshaft/worklog';
import { useState } from 'react';
import { ChoiceGroup } from '@/components/choice-group';
import { SelectField } from '@/components/select-field';
import { capitalise } from '@/lib/capitalise';
import * as z from '@/lib/zod';
import { newId } from '../work/new-id';
import type { BayDialogProps } from './bay-dialog';
import { fittableCards } from './fittable-cards';
import { RecordingDialog } from './recording-dialog';
import { useDraft } from './use-draft';
import { WhenAndWords } from './when-and-words';
import { factPlaceOf } from './when-field';

const fitted = z.object({
  cardId: z.string(),
  position: z.string(),
  words: z.string(),
  because: z.enum(FITTED_REASONS).nullable().default(null),
  now: z.enum(['same', 'other', 'altered']).default('same'),
  /** A stage, or empty for here; null: not chosen yet. */
  stageId: z.string().nullable(),
});

/** A part of another kind, or an altered one, has a life of its own: it is not counted with those before. */
const NOW = [
  { value: 'same', label: 'A new one, the same kind' },
  { value: 'other', label: 'A new one of another kind' },
  { value: 'altered', label: 'The old one, altered or routed another way' },
];
const REASONS = FITTED_REASONS.map((value) => ({ value, label: capitalise(fittedReasonInWords(value)) }));

interface FittedDialogProps extends BayDialogProps {
  /** Whose part it was, where that is known already. */
  cardId: CardId | null;
  /** Where it may have been, the likeliest first. */
  stages: readonly StageId[];
}

/** A part that was changed away from service. It is in the log, and calls for its look once it has been driven. */
export function FittedDialog({ work, visit, by, onClose, cardId, stages }: FittedDialogProps) {
  const { entry, service } = visit;
  const empty = {
    cardId: cardId ?? '',
    position: '',
    words: '',
    because: null,
    now: 'same' as const,
    stageId: null,
  };
  const [draft, setDraft, clearDraft] = useDraft(`fitted.${entry.entryId}.${cardId ?? ''}`, fitted, empty);
  const [asked, setAsked] = useState(false);
  const cards = fittableCards(entry);
  const stageId = draft.stageId ?? stages[0] ?? '';

  function finish() {
    if (draft.cardId === '') return setAsked(true);
    const at = factPlaceOf(stageId, service.id);
    work.act('recordFact', { factId: newId(), entryId: entry.entryId, at, fact: factOf(draft) }, by);
    clearDraft();
    onClose();
  }

  return (
    <RecordingDialog
      title="A part was changed"
      onClose={onClose}
      goOn={{ words: 'Write it down', act: finish }}
    >
      <SelectField
        label="Part of which job?"
        {...(draft.cardId === '' ? { unchosen: 'Choose the job' } : {})}
        options={cards.map(({ id, name }) => ({ value: id, label: name }))}
        value={draft.cardId}
        error={asked && draft.cardId === '' ? 'Choose the job the part belongs to.' : undefined}
        onChange={(event) => setDraft({ ...draft, cardId: event.target.value })}
      />
      <ChoiceGroup
        label="Which corner?"
        optional
        across
        choices={CORNERS.map((corner) => ({ value: corner, label: corner }))}
        chosen={[draft.position]}
        onChange={(event) => setDraft({ ...draft, position: event.target.value })}
      />
      <ChoiceGroup
        label="What is on now?"
        choices={NOW}
        chosen={[draft.now]}
        onChange={({ target }) => setDraft({ ...draft, now: fitted.shape.now.parse(target.value) })}
      />
      {draft.now === 'altered' ? null : (
        <ChoiceGroup
          label="Why was it changed?"
          optional
          choices={REASONS}
          chosen={draft.because === null ? [] : [draft.because]}
          onChange={({ target }) => setDraft({ ...draft, because: fitted.shape.because.parse(target.value) })}
        />
      )}
      <WhenAndWords
        {...{ work, visit, stages, stageId }}
        onChooseStage={(chosen) => setDraft({ ...draft, stageId: chosen })}
        words={draft.words}
        onType={(words) => setDraft({ ...draft, words })}
      />
    </RecordingDialog>
  );
}

function factOf({ cardId, position, words, because, now }: z.infer<typeof fitted>): CarFact {
  const said = { cardId, position: position || null, words: words.trim() };
  if (now === 'altered') return { kind: 'modified', ...said };
  return {
    ...{ kind: 'fitted', ...said },
    ...(because === null ? {} : { because }),
    ...(now === 'other' ? { otherKind: true } : {}),
  };
}
