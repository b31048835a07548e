import type { listOrganiserEventsOutput } from '@halfshaft/contract';
import type { z } from 'zod';

export type OrganiserEvent = z.infer<typeof listOrganiserEventsOutput>[number];

/** "published, version 2", "not published, version 1". */
export function standingInWords({ publishedAt, versions }: Pick<OrganiserEvent, 'publishedAt' | 'versions'>) {
  return `${publishedAt === null ? 'not published' : 'published'}, version ${versions}`;
}
