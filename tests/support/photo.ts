import { createHash, randomUUID } from 'node:crypto';
import { photoAddress } from '@halfshaft/contract';
import { type ActionBody, type TaskRef, taskIdOf } from '@halfshaft/worklog';

/** A grey JPEG of 2 × 2 pixels. */
export const TINY_JPEG = Buffer.from(
  '/9j/2wBDABsSFBcUERsXFhceHBsgKEIrKCUlKFE6PTBCYFVlZF9VXVtqeJmBanGQc1tdhbWGkJ6jq62rZ4C8ybqmx5' +
    'moq6T/2wBDARweHigjKE4rK06kbl1upKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSk' +
    'pKSkpKT/wAARCAACAAIDASIAAhEBAxEB/8QAFQABAQAAAAAAAAAAAAAAAAAAAAL/xAAUEAEAAAAAAAAAAAAAAAAAAA' +
    'AA/8QAFAEBAAAAAAAAAAAAAAAAAAAAAP/EABQRAQAAAAAAAAAAAAAAAAAAAAD/2gAMAwEAAhEDEQA/AKAB/9k=',
  'base64',
);

/** A photo of a piece of work as a phone records it, and its id. */
export function photoOf(task: TaskRef, file: Uint8Array = TINY_JPEG) {
  const photoId = randomUUID();
  const sha256 = createHash('sha256').update(file).digest('hex');
  const body: ActionBody = {
    kind: 'recordFact',
    args: {
      factId: photoId,
      entryId: task.entryId,
      at: { kind: 'service', serviceId: task.serviceId },
      fact: { kind: 'photo', of: taskIdOf(task), words: '', bytes: file.length, sha256 },
    },
  };
  return { photoId, body };
}

interface Bringing {
  url: string;
  teamId: string;
  photoId: string;
  cookie?: string;
  file?: Uint8Array;
  type?: string;
  origin?: string;
}

/** Brings a picture through the front door. */
export async function bringPicture(asked: Bringing) {
  const { url, teamId, photoId, cookie, file = TINY_JPEG, type = 'image/jpeg', origin } = asked;
  const response = await fetch(url + photoAddress(teamId, photoId), {
    method: 'PUT',
    headers: { 'content-type': type, ...(cookie && { cookie }), ...(origin && { origin }) },
    body: new Uint8Array(file),
  });
  return { status: response.status, body: await response.json() };
}

export function fetchPicture(url: string, teamId: string, photoId: string, cookie = ''): Promise<Response> {
  return fetch(url + photoAddress(teamId, photoId), { headers: { cookie } });
}
