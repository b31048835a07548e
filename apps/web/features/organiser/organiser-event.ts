import type { listBulletinsOutput, listOrganiserEventsOutput } from '@halfshaft/contract';
import type { z } from 'zod';

export type OrganiserEvent = z.infer<typeof listOrganiserEventsOutput>[number];
export type IssuedBulletin = z.infer<typeof listBulletinsOutput>['issued'][number];
export type BulletinDraft = NonNullable<z.infer<typeof listBulletinsOutput>['draft']>;

type Standing = Pick<OrganiserEvent, 'bulletinNumber' | 'hasDraft' | 'versions'>;

/** "not published, version 1" · "published" · "bulletin 2 issued, bulletin 3 is a draft". */
export function standingInWords({ bulletinNumber, hasDraft, versions }: Standing): string {
  if (bulletinNumber === null) return `not published, version ${versions}`;
  const issued = bulletinNumber === 0 ? 'published' : `bulletin ${bulletinNumber} issued`;
  return hasDraft ? `${issued}, bulletin ${bulletinNumber + 1} is a draft` : issued;
}

/** What the button of the editor does: before the publication a version, afterwards the draft of a bulletin. */
export function saveWordsOf(event: Standing | null): string {
  if (event === null) return 'Save the event';
  if (event.bulletinNumber === null) return `Save as version ${event.versions + 1}`;
  return `Save as the draft of bulletin ${event.bulletinNumber + 1}`;
}
