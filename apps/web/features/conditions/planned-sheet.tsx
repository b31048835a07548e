'use client';

import type { EventReplica } from '@halfshaft/contract';
import { useState } from 'react';
import { Button } from '@/components/button';
import { Sheet } from '@/components/sheet';
import { Stack } from '@/components/stack';
import { conditionsInWords } from '../bay/conditions-in-words';
import { EditPlanned } from './edit-planned';
import { stagesOf } from './stages-of';

interface PlannedSheetProps {
  teamId: string;
  event: EventReplica;
  mayManage: boolean;
}

/** What the stages are expected to be like: lamps, tyres and wear ahead rest on it. Managers may change it. */
export function PlannedSheet({ teamId, event, mayManage }: PlannedSheetProps) {
  const [editing, setEditing] = useState(false);
  const stages = stagesOf(event.itinerary);
  const expected = stages.flatMap((stage) => {
    const words = conditionsInWords(event.plannedConditions[stage.id] ?? {});
    return words === '' ? [] : [{ stage, words }];
  });
  if (stages.length === 0) return null;
  return (
    <Sheet
      title="What the stages will be like"
      aside={
        mayManage ? (
          <Button
            look="quiet"
            aria-label="Change what the stages will be like"
            onClick={() => setEditing(true)}
          >
            Change
          </Button>
        ) : null
      }
    >
      <Stack gap="small">
        {expected.length === 0 ? <p>Nothing is expected so far: light, dry and smooth.</p> : null}
        {expected.map(({ stage, words }) => (
          <p key={stage.id}>
            <strong>{stage.id}</strong> {words}
          </p>
        ))}
        <p>Lamps, wet tyres and wear ahead rest on this. What the crew says after a stage counts instead.</p>
      </Stack>
      {editing ? <EditPlanned teamId={teamId} event={event} onClose={() => setEditing(false)} /> : null}
    </Sheet>
  );
}
