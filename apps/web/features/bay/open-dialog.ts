import type { StageId } from '@halfshaft/itinerary';
import type { CardId, TaskId } from '@halfshaft/worklog';

/** The step a closing sheet begins with. */
export type CloseStep = 'sheet' | 'finding';

/** What is open over the bay. Ids only, so that a change by someone else shows inside it too. */
export type OpenDialog =
  | { kind: 'close'; taskId: TaskId; step: CloseStep }
  | { kind: 'leave' | 'reopen' | 'signHere'; taskId: TaskId }
  | { kind: 'snag' }
  | { kind: 'crewSnag' }
  | { kind: 'happened' }
  | { kind: 'fitted'; cardId: CardId | null }
  | { kind: 'stage'; stageId: StageId };
