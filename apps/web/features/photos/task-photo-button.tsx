import type { PersonId, TaskRef } from '@halfshaft/worklog';
import type { LoadedWork } from '../work/work-page';
import { PhotoButton } from './photo-button';
import { recordPhoto } from './record-photo';

interface TaskPhotoButtonProps {
  work: LoadedWork;
  by: PersonId;
  task: TaskRef;
  title: string;
}

export const NOT_KEPT =
  'This phone has no room to keep the photo. Leave this page open until it is sent, or free some room.';

/** A photo of a job or a snag, written into the log at once. */
export function TaskPhotoButton({ work, by, task, title }: TaskPhotoButtonProps) {
  return (
    <PhotoButton
      of={title}
      onTake={async (file) => ((await recordPhoto(work, by, { task, words: '', file })) ? null : NOT_KEPT)}
    />
  );
}
