'use client';

import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Button } from '@/components/button';
import { Dialog } from '@/components/dialog';
import { Stack } from '@/components/stack';
import { api, problemOf } from '@/lib/api';
import { SaveTrouble } from '../events/trouble';
import type { OrganiserEvent } from './organiser-event';

export interface PublishEventProps {
  organiserId: string;
  event: OrganiserEvent;
}

export function PublishEvent({ organiserId, event }: PublishEventProps) {
  const { publishedEventId, name } = event;
  const [asking, setAsking] = useState(false);
  const queries = useQueryClient();
  const publish = useMutation(
    api.organiser.publish.mutationOptions({
      onSuccess: async () => {
        setAsking(false);
        await queries.invalidateQueries({ queryKey: api.organiser.events.queryKey({ organiserId }) });
      },
    }),
  );
  return (
    <>
      <Button aria-label={`Publish ${name}`} onClick={() => setAsking(true)}>
        Publish
      </Button>
      <Dialog
        open={asking}
        onClose={() => setAsking(false)}
        title={`Publish “${name}”?`}
        closeWords="Not yet"
        actions={
          <Button
            look="main"
            busy={publish.isPending}
            busyWords="Publishing …"
            onClick={() => publish.mutate({ organiserId, publishedEventId })}
          >
            Publish
          </Button>
        }
      >
        <Stack>
          <p>
            Every team with an account can then see its name, first day and itinerary, and take it over. It
            cannot be taken back.
          </p>
          <SaveTrouble problem={publish.error ? problemOf(publish.error) : null} />
        </Stack>
      </Dialog>
    </>
  );
}
