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
const NEW_PART = {
  value: 'newPart',
  label: 'A new part went on',
  hint: 'Its life begins here: so the log learns how long one lasts.',
};
const SNAG = {
  value: 'snag',
  label: 'Raise a snag too',
  hint: 'So that it stands on the list until it is repaired.',
};

const findingDraft = z.object({
  lookId: z.string(),
  position: z.string(),
  grade: z.enum(GRADES).nullable(),
  words: z.string(),
  snag: z.boolean(),
  newPart: z.boolean().default(false),
});
type FindingDraft = z.infer<typeof findingDraft>;
const EMPTY = { lookId: '', position: '', grade: null, words: '', snag: false, newPart: false };

export interface FindingFormProps {
  draftKey: string;
  looks: readonly { id: string; words: string }[];
  positions: readonly string[];
  /** Whether a new part may have gone on for it. */
  asksNewPart: boolean;
  onAdd: (finding: Finding, raiseSnag: boolean) => void;
  /** Resolves once they are kept for sending. Left away, no photos are taken: what is read from paper has none. */
  onPhotos?: (finding: Finding, files: readonly Uint8Array<ArrayBuffer>[]) => Promise<unknown>;
}

/** Exceptions only: which look, where, how bad, a few words. Only how bad must be said, and of a new part where it went on. */
export function FindingForm(props: FindingFormProps) {
  const { draftKey, looks, positions, onAdd, onPhotos } = props;
  const [draft, setDraft, clearDraft] = useDraft(draftKey, findingDraft, EMPTY);
  const [files, setFiles, clearFiles] = useDraftPhotos(draftKey);
  const { grade } = draft;
  // What was patched was not changed.
  const asksNewPart = props.asksNewPart && grade !== 'temporaryRepair';
  const newPart = asksNewPart && draft.newPart;
  const missing = missingIn({ ...draft, newPart }, looks.length > 0, positions.length > 1);

  function add() {
    if (grade === null || missing !== null) return;
    const { lookId, position, words, snag } = draft;
    const said = { lookId: lookId || null, position: position || null, grade, words: words.trim() };
    const finding: Finding = newPart ? { ...said, newPart } : said;
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
          setDraft({ ...draft, grade: chosen, snag: draft.snag || isLeftToRepair(chosen, draft.newPart) });
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
        choices={asksNewPart ? [NEW_PART, SNAG] : [SNAG]}
        chosen={[...(newPart ? ['newPart'] : []), ...(draft.snag ? ['snag'] : [])]}
        onChange={({ target: { value, checked } }) =>
          // Once a new part is on, nothing is left to repair, unless somebody says so.
          setDraft(
            value === 'snag'
              ? { ...draft, snag: checked }
              : { ...draft, newPart: checked, snag: !checked && (draft.snag || grade === 'needsWork') },
          )
        }
      />
      <Button look="main" wide disabled={missing !== null} onClick={add}>
        {missing ?? 'Note it'}
      </Button>
    </>
  );
}

/** What is only patched stays on the list, and what needs work unless a new part is on. */
function isLeftToRepair(grade: FindingGrade | null, newPart: boolean): boolean {
  return grade === 'temporaryRepair' || (grade === 'needsWork' && !newPart);
}

/** What must be said yet, or null. A new part whose place nobody knows would begin no life. */
function missingIn({ grade, newPart, lookId, position }: FindingDraft, isRound: boolean, hasPlaces: boolean) {
  if (grade === null) return 'Say how bad it is';
  if (newPart && isRound && lookId === '') return 'Say which look the new part belongs to';
  return newPart && hasPlaces && position === '' ? 'Say where the new part went on' : null;
}
