import { carPlace } from '@halfshaft/contract';
import { useState } from 'react';
import { ChoiceGroup } from '@/components/choice-group';
import { TextField } from '@/components/text-field';
import * as z from '@/lib/zod';
import { CarPlan } from '../car-plan/car-plan';
import { DraftPhotos } from '../photos/draft-photos';
import { recordPhoto } from '../photos/record-photo';
import { useDraftPhotos } from '../photos/use-draft-photos';
import { newId } from '../work/new-id';
import type { BayDialogProps } from './bay-dialog';
import { RecordingDialog } from './recording-dialog';
import { useDraft } from './use-draft';

const snagDraft = z.object({ place: carPlace.nullable(), words: z.string(), urgent: z.boolean() });
const EMPTY = { place: null, words: '', urgent: false };
const URGENT = [{ value: 'urgent', label: 'Urgent', hint: 'Before the car leaves.' }];

/** Unplanned work in five seconds: where, a few words. */
export function SnagDialog({ work, visit, by, onClose }: BayDialogProps) {
  const { entryId } = visit.entry;
  const [draft, setDraft, clearDraft] = useDraft(`snag.${entryId}`, snagDraft, EMPTY);
  const [asked, setAsked] = useState(false);
  const [files, setFiles, clearFiles] = useDraftPhotos(`snag.${entryId}`);
  const words = draft.words.trim();

  function finish() {
    if (words === '') return setAsked(true);
    const { place, urgent } = { ...draft, place: draft.place ?? 'wholeCar' };
    const snagId = newId();
    const serviceId = visit.service.id;
    work.act('raiseSnag', { snagId, entryId, serviceId, place, words, urgent }, by);
    const task = { entryId, serviceId, source: { kind: 'snag' as const, snagId } };
    void Promise.all(files.map((file) => recordPhoto(work, by, { task, words: '', file }))).then(clearFiles);
    clearDraft();
    onClose();
  }

  return (
    <RecordingDialog title="Snag" onClose={onClose} goOn={{ words: 'Raise the snag', act: finish }}>
      <TextField
        label="What is wrong?"
        maxLength={300}
        value={draft.words}
        error={asked && words === '' ? 'Say in a few words what is wrong.' : undefined}
        onChange={(event) => setDraft({ ...draft, words: event.target.value })}
      />
      <DraftPhotos of="the snag" files={files} onChange={setFiles} />
      <CarPlan label="Where?" chosen={draft.place} onChoose={(place) => setDraft({ ...draft, place })} />
      <ChoiceGroup
        label="How soon?"
        pick="many"
        choices={URGENT}
        chosen={draft.urgent ? ['urgent'] : []}
        onChange={(event) => setDraft({ ...draft, urgent: event.target.checked })}
      />
    </RecordingDialog>
  );
}
