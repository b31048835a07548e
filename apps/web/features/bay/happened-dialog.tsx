import { carPlace } from '@halfshaft/contract';
import { INCIDENT_CODES, type IncidentCode, incidentInWords } from '@halfshaft/lifing';
import { useState } from 'react';
import { ChoiceGroup } from '@/components/choice-group';
import { SelectField } from '@/components/select-field';
import { capitalise } from '@/lib/capitalise';
import * as z from '@/lib/zod';
import { CarPlan } from '../car-plan/car-plan';
import { newId } from '../work/new-id';
import type { BayDialogProps } from './bay-dialog';
import { fittableCards } from './fittable-cards';
import { RecordingDialog } from './recording-dialog';
import { stageIdsBack } from './stages-before';
import { useDraft } from './use-draft';
import { WhenAndWords } from './when-and-words';
import { factPlaceOf } from './when-field';

const happened = z.object({
  code: z.enum(INCIDENT_CODES).nullable(),
  place: carPlace.nullable(),
  words: z.string(),
  /** Of a part that broke; empty: none. */
  brokenCardId: z.string().default(''),
  /** A stage, or empty for here. */
  stageId: z.string().nullable(),
});
const EMPTY = { code: null, place: null, words: '', brokenCardId: '', stageId: null };
const CHOICES = INCIDENT_CODES.map((code) => ({ value: code, label: capitalise(incidentInWords(code)) }));

/** What the crew met on the road, in three taps: what, where on the car, done. It calls for the cards that look at it. */
export function HappenedDialog({ work, visit, by, onClose }: BayDialogProps) {
  const { entry, service } = visit;
  const [draft, setDraft, clearDraft] = useDraft(`happened.${entry.entryId}`, happened, EMPTY);
  const [asked, setAsked] = useState(false);
  const stages = stageIdsBack(work.replica, work.state, visit);
  const stageId = draft.stageId ?? stages[0] ?? '';

  function finish() {
    if (draft.code === null) return setAsked(true);
    const fact = {
      kind: 'incident' as const,
      code: draft.code,
      place: draft.place,
      words: draft.words.trim(),
      ...(draft.brokenCardId === '' ? {} : { brokenCardId: draft.brokenCardId }),
    };
    const at = factPlaceOf(stageId, service.id);
    work.act('recordFact', { factId: newId(), entryId: entry.entryId, at, fact }, by);
    clearDraft();
    onClose();
  }

  return (
    <RecordingDialog
      title="Something happened"
      onClose={onClose}
      goOn={{ words: 'Write it down', act: finish }}
    >
      <ChoiceGroup
        label="What happened?"
        across
        choices={CHOICES}
        chosen={draft.code === null ? [] : [draft.code]}
        error={asked && draft.code === null ? 'Choose what happened.' : undefined}
        onChange={(event) => setDraft({ ...draft, code: event.target.value as IncidentCode })}
      />
      <CarPlan
        label="Where on the car?"
        chosen={draft.place}
        onChoose={(place) => setDraft({ ...draft, place })}
      />
      <WhenAndWords
        {...{ work, visit, stages, stageId }}
        onChooseStage={(chosen) => setDraft({ ...draft, stageId: chosen })}
        words={draft.words}
        onType={(words) => setDraft({ ...draft, words })}
      >
        <SelectField
          label="Did a part break in it?"
          options={[
            { value: '', label: 'No, or not known' },
            ...fittableCards(entry).map(({ id, name }) => ({ value: id, label: `Yes: ${name}` })),
          ]}
          value={draft.brokenCardId}
          onChange={(event) => setDraft({ ...draft, brokenCardId: event.target.value })}
        />
      </WhenAndWords>
    </RecordingDialog>
  );
}
