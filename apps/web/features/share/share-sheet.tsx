'use client';

import type { ShareChoice } from '@halfshaft/contract';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Button } from '@/components/button';
import { Sheet } from '@/components/sheet';
import { api } from '@/lib/api';
import { EditShare } from './edit-share';

const CHOSEN: Record<ShareChoice, string> = {
  nothing: 'The organiser is told nothing of your log.',
  totals: 'The organiser is told sums that your log is part of.',
  rows: 'The organiser is told sums, and each of your cars without a name.',
};

interface ShareSheetProps {
  teamId: string;
  eventId: string;
  mayManage: boolean;
}

/** What the organiser of an event that was taken over is told; nothing on an event of the team's own. */
export function ShareSheet({ teamId, eventId, mayManage }: ShareSheetProps) {
  const share = useQuery({ ...api.share.get.queryOptions({ teamId, eventId }), enabled: mayManage });
  const [editing, setEditing] = useState(false);
  if (!mayManage || !share.data) return null;
  const { data } = share;
  return (
    <Sheet
      title={`What ${data.organiserName} is told`}
      aside={
        <Button look="quiet" aria-label="Choose what the organiser is told" onClick={() => setEditing(true)}>
          Choose
        </Button>
      }
    >
      <p>{CHOSEN[data.choice]}</p>
      {data.isOld ? <p>The log says more by now. Choose again to bring it up to date.</p> : null}
      {editing ? <EditShare {...{ teamId, eventId, share: data }} onClose={() => setEditing(false)} /> : null}
    </Sheet>
  );
}
