import { carPlace } from '@halfshaft/contract';
import { Button } from '@/components/button';
import { TextField } from '@/components/text-field';
import * as z from '@/lib/zod';
import { CarPlan } from '../car-plan/car-plan';
import { newId } from '../work/new-id';
import styles from './bay.module.css';
import type { BayDialogProps } from './bay-dialog';
import { RecordingDialog } from './recording-dialog';
import { useDraft } from './use-draft';

const crewSnag = z.object({ place: carPlace.nullable(), words: z.string() });
const EMPTY = { place: null, words: '' };
const HOW_BAD = [
  { words: 'Can wait', gravity: { urgent: false } },
  { words: 'Next service', gravity: { urgent: true } },
  { words: 'Stop for this', gravity: { urgent: true, stop: true as const } },
];

/** A snag from the seat: where, and how bad. Words may stay empty, since whoever drives has no hand for them. */
export function CrewSnagDialog({ work, visit, by, onClose }: BayDialogProps) {
  const { entryId } = visit.entry;
  const [draft, setDraft, clearDraft] = useDraft(`crewSnag.${entryId}`, crewSnag, EMPTY);

  function raise(gravity: (typeof HOW_BAD)[number]['gravity']) {
    const place = draft.place ?? 'wholeCar';
    const words = draft.words.trim() || 'The crew asks for a look here';
    const serviceId = visit.service.id;
    work.act('raiseSnag', { snagId: newId(), entryId, serviceId, place, words, ...gravity }, by);
    clearDraft();
    onClose();
  }

  return (
    <RecordingDialog title="Something is wrong" onClose={onClose}>
      <CarPlan label="Where?" chosen={draft.place} onChoose={(place) => setDraft({ ...draft, place })} />
      <fieldset className={styles.levels}>
        <legend>How bad? This writes it down.</legend>
        {HOW_BAD.map(({ words, gravity }) => (
          <Button key={words} onClick={() => raise(gravity)}>
            {words}
          </Button>
        ))}
      </fieldset>
      <TextField
        label="In a few words, before you say how bad"
        optional
        maxLength={300}
        value={draft.words}
        onChange={(event) => setDraft({ ...draft, words: event.target.value })}
      />
    </RecordingDialog>
  );
}
