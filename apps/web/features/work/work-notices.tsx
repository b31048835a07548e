import type { ActionKind, TaskRef } from '@halfshaft/worklog';
import { Button } from '@/components/button';
import { Notice } from '@/components/notice';
import { entryNamesOf } from './names';
import type { OpenedWork } from './use-event-work';
import type { WorkNotice } from './waiting-action';

/** What was asked for, as the title of a notice. */
const ASKED: Record<ActionKind, string> = {
  takeTask: 'Take',
  releaseTask: 'Let go',
  startTask: 'Start',
  closeTask: 'Done',
  carryOverTask: 'Carry over',
  dropTask: 'Not needed',
  reopenTask: 'Open again',
  signTask: 'Sign',
  raiseSnag: 'Snag',
  confirmStage: 'Stage',
  recordTime: 'Time at a control or stage',
  recordFact: 'What happened to the car',
  undo: 'Undo',
};

/** What this phone's people must be told: what was not taken, and what was kept with something against it. */
export function WorkNotices({ work }: { work: OpenedWork }) {
  const newest = work.notices.at(-1);
  if (!newest) return null;
  const more = work.notices.length - 1;
  return (
    <Notice
      key={newest.id}
      kind={newest.kind === 'refused' ? 'problem' : 'warning'}
      title={titleOf(newest, work)}
      spoken
    >
      <p>{newest.sentence}</p>
      <div>
        <Button onClick={() => work.dismiss(newest.id)}>
          {more > 0 ? `Read it. Next (${more} more)` : 'Read it'}
        </Button>
      </div>
    </Notice>
  );
}

function titleOf({ action, kind }: WorkNotice, { replica, state }: OpenedWork): string {
  if (!action) return 'This concerns you';
  const asked = ASKED[action.kind as ActionKind] ?? action.kind;
  const task = taskOfArgs(action.args);
  const what = task ? ` “${entryNamesOf(replica, state).task(task)}”` : '';
  return kind === 'refused' ? `Not taken: ${asked}${what}` : `${asked}${what}`;
}

function taskOfArgs(args: unknown): TaskRef | null {
  return typeof args === 'object' && args !== null && 'task' in args ? (args.task as TaskRef) : null;
}
