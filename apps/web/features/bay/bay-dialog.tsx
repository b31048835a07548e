import type { PersonId, TaskId } from '@halfshaft/worklog';
import { judgeVisit } from '../service/judge-visit';
import { snagsOfCar } from '../service/snags-of-car';
import { reasonNamesOf } from '../service/time-in-words';
import type { Visit } from '../service/visit';
import { nameOf } from '../work/names';
import type { LoadedWork } from '../work/work-page';
import { type BayTask, bayTaskOfCard, bayTaskOfSnag } from './bay-task';
import { CloseDialog } from './close-dialog';
import { CrewSnagDialog } from './crew-snag-dialog';
import { FittedDialog } from './fitted-dialog';
import { HappenedDialog } from './happened-dialog';
import { LeaveDialog } from './leave-dialog';
import type { OpenDialog } from './open-dialog';
import { ReopenDialog } from './reopen-dialog';
import { SignHereDialog } from './sign-here-dialog';
import { SnagDialog } from './snag-dialog';
import { StageDialog } from './stage-dialog';
import { stageIdsBack } from './stages-before';

export interface BayDialogProps {
  work: LoadedWork;
  visit: Visit;
  by: PersonId;
  onClose: () => void;
}

export function BayDialog({ dialog, ...props }: BayDialogProps & { dialog: OpenDialog }) {
  if (dialog.kind === 'snag') return <SnagDialog {...props} />;
  if (dialog.kind === 'crewSnag') return <CrewSnagDialog {...props} />;
  if (dialog.kind === 'happened') return <HappenedDialog {...props} />;
  if (dialog.kind === 'fitted') {
    const stages = stageIdsBack(props.work.replica, props.work.state, props.visit);
    return <FittedDialog {...props} cardId={dialog.cardId} stages={stages} />;
  }
  if (dialog.kind === 'stage') return <StageDialog {...props} stageId={dialog.stageId} />;
  const bayTask = findBayTask(props, dialog.taskId);
  if (!bayTask) return null;
  switch (dialog.kind) {
    case 'close':
      return <CloseDialog {...props} bayTask={bayTask} firstStep={dialog.step} />;
    case 'leave':
      return <LeaveDialog {...props} bayTask={bayTask} />;
    case 'reopen':
      return <ReopenDialog {...props} bayTask={bayTask} />;
    case 'signHere':
      return <SignHereDialog {...props} bayTask={bayTask} />;
  }
}

function findBayTask({ work, visit }: BayDialogProps, taskId: TaskId): BayTask | null {
  const { replica, state } = work;
  const names = reasonNamesOf(replica, visit.inAt);
  const card = judgeVisit(replica, state, visit).find(({ task }) => task.id === taskId);
  if (card) return bayTaskOfCard(card, names);
  const snags = snagsOfCar(state, visit.entry.entryId, visit.service.id);
  const snag = snags.find(({ task }) => task.id === taskId);
  return snag ? bayTaskOfSnag(snag, nameOf(replica, snag.snag.raisedBy)) : null;
}
