'use client';

import { useQuery } from '@tanstack/react-query';
import type { Ref } from 'react';
import { LoadingState } from '@/components/loading-state';
import { Sheet } from '@/components/sheet';
import { Stack } from '@/components/stack';
import { api } from '@/lib/api';
import { LoadTrouble } from '../events/trouble';
import type { OrganiserEvent } from '../organiser/organiser-event';
import styles from './bulletins.module.css';
import { DraftSheet } from './draft-sheet';
import { IssuedList } from './issued-list';

export interface BulletinDeskProps {
  organiserId: string;
  /** A published one. */
  event: OrganiserEvent;
  /** Of the whole, for the focus after a draft was saved. */
  ref?: Ref<HTMLDivElement>;
}

/** The organiser's side: the draft that waits, with what it changes, and all that was issued. */
export function BulletinDesk({ organiserId, event, ref }: BulletinDeskProps) {
  const { publishedEventId, timeZone } = event;
  const own = { organiserId, publishedEventId };
  const bulletins = useQuery(api.bulletin.list.queryOptions(own));
  return (
    <div ref={ref} tabIndex={-1} className={styles.desk}>
      {bulletins.isPending ? (
        <LoadingState words="Fetching the bulletins …" />
      ) : bulletins.data === undefined ? (
        <LoadTrouble error={bulletins.error} onTryAgain={() => bulletins.refetch()} />
      ) : (
        <Stack gap="large">
          {bulletins.data.draft ? (
            <DraftSheet
              own={own}
              number={(bulletins.data.issued[0]?.number ?? 0) + 1}
              draft={bulletins.data.draft}
              timeZone={timeZone}
            />
          ) : (
            <Sheet title="Bulletins">
              <p>
                Teams have all that you saved. To change something, save the itinerary below: it stays a draft
                that only you see until you issue it as bulletin {(bulletins.data.issued[0]?.number ?? 0) + 1}
                .
              </p>
            </Sheet>
          )}
          <IssuedList issued={bulletins.data.issued} timeZone={timeZone} />
        </Stack>
      )}
    </div>
  );
}
