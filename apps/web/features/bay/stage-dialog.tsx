import { conditions } from '@halfshaft/contract';
import type { ConditionName, StageId } from '@halfshaft/itinerary';
import { stageKeyOf } from '@halfshaft/worklog';
import { Button } from '@/components/button';
import * as z from '@/lib/zod';
import styles from './bay.module.css';
import type { BayDialogProps } from './bay-dialog';
import { CONDITION_NAMES, LEVELS, levelInWords } from './conditions-in-words';
import { RecordingDialog } from './recording-dialog';
import { useDraft } from './use-draft';

const NAMES = Object.keys(CONDITION_NAMES) as ConditionName[];
const stageDraft = z.object({ conditions });

/** What a stage was like: a tap for each condition that was there. */
export function StageDialog({ work, visit, by, onClose, stageId }: BayDialogProps & { stageId: StageId }) {
  const { entryId } = visit.entry;
  const said = work.state.stages.get(stageKeyOf({ entryId, stageId }));
  const [draft, setDraft, clearDraft] = useDraft(`stage.${entryId}.${stageId}`, stageDraft, {
    conditions: said?.conditions ?? {},
  });

  function finish() {
    const confirmed = { entryId, stageId, driven: true, conditions: draft.conditions };
    work.act('confirmStage', confirmed, by);
    clearDraft();
    onClose();
  }

  return (
    <RecordingDialog
      title={`${stageId}: what was it like?`}
      onClose={onClose}
      goOn={{ words: 'Driven, and so it was', act: finish }}
    >
      {NAMES.map((name) => (
        <fieldset key={name} className={styles.levels}>
          <legend>{CONDITION_NAMES[name]}</legend>
          {LEVELS.map(({ perMille, words }) => (
            <Button
              key={words}
              aria-pressed={levelInWords(draft.conditions[name] ?? 0) === words}
              onClick={() => setDraft({ conditions: { ...draft.conditions, [name]: perMille } })}
            >
              {words}
            </Button>
          ))}
        </fieldset>
      ))}
    </RecordingDialog>
  );
}
