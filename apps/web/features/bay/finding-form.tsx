import type { Finding, FindingGrade } from '@halfshaft/worklog';
import { Button } from '@/components/button';
import { ChoiceGroup } from '@/components/choice-group';
import { TextField } from '@/components/text-field';
import * as z from '@/lib/zod';
import { DraftPhotos } from '../photos/draft-photos';
import { useDraftPhotos } from '../photos/use-draft-photos';
import { GRADE_WORDS } from '../work/task-in-words';
import { useDraft } from './use-draft';

const GRADES = ['watch', 'needsWork', 'temporaryRepair'] as const satisfies readonly FindingGrade[];
const CHOICES = GRADES.map((grade) => ({ value: grade, label: GRADE_WORDS[grade] }));
const SNAG = [
  { value: 'snag', label: 'Raise a snag too', hint: 'So that it stands on the list until it is repaired.' },
];

const findingDraft = z.object({
  lookId: z.string(),
  position: z.string(),
  grade: z.enum(GRADES).nullable(),
  words: z.string(),
  snag: z.boolean(),
});
const EMPTY = { lookId: '', position: '', grade: null, words: '', snag: false };

export interface FindingFormProps {
  draftKey: string;
  looks: readonly { id: string; words: string }[];
  positions: readonly string[];
  onAdd: (finding: Finding, raiseSnag: boolean) => void;
  /** Resolves once they are kept for sending. Left away, no photos are taken: what is read from paper has none. */
  onPhotos?: (finding: Finding, files: readonly Uint8Array<ArrayBuffer>[]) => Promise<unknown>;
}

/** Exceptions only: which look, where, how bad, a few words. Only how bad must be said. */
export function FindingForm({ draftKey, looks, positions, onAdd, onPhotos }: FindingFormProps) {
  const [draft, setDraft, clearDraft] = useDraft(draftKey, findingDraft, EMPTY);
  const [files, setFiles, clearFiles] = useDraftPhotos(draftKey);
  const { grade } = draft;

  function add() {
    if (grade === null) return;
    const { lookId, position, words, snag } = draft;
    const finding = { lookId: lookId || null, position: position || null, grade, words: words.trim() };
    clearDraft();
    onAdd(finding, snag);
    void onPhotos?.(finding, files).then(clearFiles);
  }

  return (
    <>
      {looks.length > 0 ? (
        <ChoiceGroup
          label="Which look?"
          choices={looks.map((look) => ({ value: look.id, label: look.words }))}
          chosen={[draft.lookId]}
          onChange={(event) => setDraft({ ...draft, lookId: event.target.value })}
        />
      ) : null}
      {positions.length > 0 ? (
        <ChoiceGroup
          label="Where?"
          across
          choices={positions.map((position) => ({ value: position, label: position }))}
          chosen={[draft.position]}
          onChange={(event) => setDraft({ ...draft, position: event.target.value })}
        />
      ) : null}
      <ChoiceGroup
        label="How bad?"
        choices={CHOICES}
        chosen={grade === null ? [] : [grade]}
        onChange={(event) => {
          const chosen = GRADES.find((each) => each === event.target.value) ?? null;
          setDraft({ ...draft, grade: chosen, snag: draft.snag || chosen !== 'watch' });
        }}
      />
      <TextField
        label="In a few words"
        optional
        maxLength={200}
        value={draft.words}
        onChange={(event) => setDraft({ ...draft, words: event.target.value })}
      />
      {onPhotos ? <DraftPhotos of="what was found" files={files} onChange={setFiles} /> : null}
      <ChoiceGroup
        label="And then?"
        pick="many"
        choices={SNAG}
        chosen={draft.snag ? ['snag'] : []}
        onChange={(event) => setDraft({ ...draft, snag: event.target.checked })}
      />
      <Button look="main" wide disabled={grade === null} onClick={add}>
        {grade === null ? 'Say how bad it is' : 'Note it'}
      </Button>
    </>
  );
}
