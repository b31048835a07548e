import type { StageId } from '@halfshaft/itinerary';
import { CORNERS } from '@halfshaft/lifing';
import type { CardId } from '@halfshaft/worklog';
import { useState } from 'react';
import { Button } from '@/components/button';
import { ChoiceGroup } from '@/components/choice-group';
import { Dialog } from '@/components/dialog';
import { SelectField } from '@/components/select-field';
import { TextField } from '@/components/text-field';
import * as z from '@/lib/zod';
import { serviceNameOf } from '../work/names';
import { newId } from '../work/new-id';
import type { BayDialogProps } from './bay-dialog';

import { fittableCards } from './fittable-cards';
import { useDraft } from './use-draft';
import { factPlaceOf, WhenField } from './when-field';

const fitted = z.object({
  cardId: z.string(),
  position: z.string(),
  words: z.string(),
  /** A stage, or empty for here; null: not chosen yet. */
  stageId: z.string().nullable(),
});

interface FittedDialogProps extends BayDialogProps {
  /** Whose part it was, where that is known already. */
  cardId: CardId | null;
  /** Where it may have been, the likeliest first. */
  stages: readonly StageId[];
}

/** A part that was changed away from service. It is in the log, and calls for its look once it has been driven. */
export function FittedDialog({ work, visit, by, onClose, cardId, stages }: FittedDialogProps) {
  const { entry, service } = visit;
  const empty = { cardId: cardId ?? '', position: '', words: '', stageId: null };
  const [draft, setDraft, clearDraft] = useDraft(`fitted.${entry.entryId}.${cardId ?? ''}`, fitted, empty);
  const [asked, setAsked] = useState(false);
  const cards = fittableCards(entry);
  const stageId = draft.stageId ?? stages[0] ?? '';

  function finish() {
    if (draft.cardId === '') return setAsked(true);
    const { position, words } = draft;
    const at = factPlaceOf(stageId, service.id);
    const fact = {
      kind: 'fitted' as const,
      cardId: draft.cardId,
      position: position || null,
      words: words.trim(),
    };
    work.act('recordFact', { factId: newId(), entryId: entry.entryId, at, fact }, by);
    clearDraft();
    onClose();
  }

  return (
    <Dialog
      open
      onClose={onClose}
      title="A part was changed"
      closeWords="Not yet"
      actions={
        <Button look="main" onClick={finish}>
          Write it down
        </Button>
      }
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
      <WhenField
        stages={stages}
        serviceName={serviceNameOf(work.replica, service.id)}
        stageId={stageId}
        onChoose={(chosen) => setDraft({ ...draft, stageId: chosen })}
      />
      <TextField
        label="In a few words"
        optional
        maxLength={300}
        value={draft.words}
        onChange={(event) => setDraft({ ...draft, words: event.target.value })}
      />
    </Dialog>
  );
}
