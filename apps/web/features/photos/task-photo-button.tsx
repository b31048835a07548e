import type { PersonId, TaskRef } from '@halfshaft/worklog';
import { later } from '@/lib/later';
import type { LoadedWork } from '../work/work-page';
import { PhotoButton } from './photo-button';

interface TaskPhotoButtonProps {
  work: LoadedWork;
  by: PersonId;
  task: TaskRef;
  title: string;
}

export const NOT_KEPT =
  'This phone has no room to keep the photo. Leave this page open until it is sent, or free some room.';
const NOT_HERE =
  'This phone has not fetched all of this page yet. Take the photo again when you have a connection.';
const RECORDING = later(() => import('./record-photo'));

/** A photo of a job or a snag, written into the log at once. */
export function TaskPhotoButton({ work, by, task, title }: TaskPhotoButtonProps) {
  async function take(file: Uint8Array<ArrayBuffer>) {
    const recording = await RECORDING.fetch().catch(() => null);
    if (!recording) return NOT_HERE;
    return (await recording.recordPhoto(work, by, { task, words: '', file })) ? null : NOT_KEPT;
  }
  return <PhotoButton of={title} onTake={take} />;
}
