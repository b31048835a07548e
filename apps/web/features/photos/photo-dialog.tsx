import type { Photo } from '@halfshaft/worklog';
import { Dialog } from '@/components/dialog';
import { entryNamesOf } from '../work/names';
import type { LoadedWork } from '../work/work-page';
import { captionOf } from './caption-of';
import { Picture } from './picture';
import { usePhotos } from './use-photos';

interface PhotoDialogProps {
  work: LoadedWork;
  photo: Photo;
  onClose: () => void;
}

/** One photo as large as the screen allows. */
export function PhotoDialog({ work, photo, onClose }: PhotoDialogProps) {
  const { replica, state, teamId, photos } = work;
  const kept = usePhotos(photos).find(({ photoId }) => photoId === photo.factId);
  const names = entryNamesOf(replica, state);
  const takenBy = names.person(photo.recordedBy);
  const words = captionOf(photo, names);
  return (
    <Dialog open onClose={onClose} title={words}>
      <Picture size="full" {...{ teamId, photoId: photo.factId, kept, takenBy, words }} />
      <p>Taken by {takenBy}.</p>
    </Dialog>
  );
}
