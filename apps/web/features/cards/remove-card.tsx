'use client';

import type { JobCard } from '@halfshaft/lifing';
import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { Button } from '@/components/button';
import { Dialog } from '@/components/dialog';
import { Stack } from '@/components/stack';
import { api, problemOf } from '@/lib/api';
import { SaveTrouble } from '../events/trouble';

export interface RemoveCardProps {
  teamId: string;
  card: JobCard;
  onRemoved: () => void;
}

export function RemoveCard({ teamId, card, onRemoved }: RemoveCardProps) {
  const [asking, setAsking] = useState(false);
  const mutation = useMutation(api.card.remove.mutationOptions({ onSuccess: onRemoved }));
  return (
    <>
      <Button look="quiet" onClick={() => setAsking(true)}>
        Remove the card
      </Button>
      <Dialog
        open={asking}
        onClose={() => setAsking(false)}
        title={`Remove “${card.name}”?`}
        closeWords="Keep it"
        actions={
          <Button
            look="main"
            busy={mutation.isPending}
            busyWords="Removing …"
            onClick={() => mutation.mutate({ teamId, cardId: card.id })}
          >
            Remove
          </Button>
        }
      >
        <Stack>
          <p>
            It is asked for no more, at any event. What was done and written down so far stays in the log.
          </p>
          <SaveTrouble problem={mutation.error ? problemOf(mutation.error) : null} />
        </Stack>
      </Dialog>
    </>
  );
}
