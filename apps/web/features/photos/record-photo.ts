import { type PersonId, type TaskRef, taskIdOf } from '@halfshaft/worklog';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { nameOf } from '../work/names';
import { newId } from '../work/new-id';
import { placeOf } from '../work/waiting-action';
import type { LoadedWork } from '../work/work-page';

export interface PhotoToRecord {
  /** The job, or the repair of the snag. */
  task: TaskRef;
  /** What is to be seen; may be empty. */
  words: string;
  file: Uint8Array<ArrayBuffer>;
}

/**
 * Keeps the picture on this phone first and then writes the photo into the log, so that no phone waits for a picture that
 * was lost on the way. Resolves to false when the phone could not keep it beyond the page.
 */
export async function recordPhoto(work: LoadedWork, by: PersonId, photo: PhotoToRecord): Promise<boolean> {
  const { task, words, file } = photo;
  const { replica, teamId, eventId, photos } = work;
  const owner = replica.me.personId;
  const kept = {
    ...{ photoId: newId(), place: placeOf(teamId, eventId), owner, ownerName: nameOf(replica, owner) },
    ...{ takenAt: Date.now(), file, refused: null },
  };
  const isKept = await photos.add(kept);
  const { entryId, serviceId } = task;
  const fact = {
    ...{ kind: 'photo' as const, of: taskIdOf(task), words },
    // Browsers give their own check sums to pages over https only.
    ...{ bytes: file.length, sha256: bytesToHex(sha256(file)) },
  };
  const at = { kind: 'service' as const, serviceId };
  const said = work.act('recordFact', { factId: kept.photoId, entryId, at, fact }, by);
  if (!said.ok) await photos.drop(kept);
  return isKept;
}
