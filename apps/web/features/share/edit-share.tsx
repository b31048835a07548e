'use client';

import { SHARE_CHOICES, type ShareChoice, type TeamShare } from '@halfshaft/contract';
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Button } from '@/components/button';
import { ChoiceGroup } from '@/components/choice-group';
import { Dialog } from '@/components/dialog';
import { Disclosure } from '@/components/disclosure';
import { LoadingState } from '@/components/loading-state';
import { api, problemOf } from '@/lib/api';
import { LoadTrouble, SaveTrouble } from '../events/trouble';
import { CountedCars } from './counted-cars';

const CHOICES: Record<ShareChoice, { label: string; hint: string }> = {
  nothing: { label: 'Nothing', hint: 'What was told before is deleted.' },
  totals: { label: 'Sums only', hint: 'Added up with at least four other teams.' },
  rows: {
    label: 'Sums, and each car without a name',
    hint: 'A line for each car among those of at least four other teams.',
  },
};

interface EditShareProps {
  teamId: string;
  eventId: string;
  share: TeamShare;
  onClose: () => void;
}

export function EditShare({ teamId, eventId, share, onClose }: EditShareProps) {
  const [choice, setChoice] = useState(share.choice);
  const queries = useQueryClient();
  const choose = useMutation(api.share.choose.mutationOptions());

  async function save() {
    try {
      await choose.mutateAsync({ teamId, eventId, choice });
      onClose();
      await queries.invalidateQueries({ queryKey: api.share.get.queryKey({ teamId, eventId }) });
    } catch {
      // Told below, by the mutation's own error.
    }
  }

  return (
    <Dialog
      open
      onClose={onClose}
      title={`What ${share.organiserName} is told`}
      actions={
        <Button look="main" onClick={save} busy={choose.isPending} busyWords="Saving …">
          Save
        </Button>
      }
    >
      <p>
        Never a name, a car number, a time or anything somebody wrote. You can take it back at any time; what
        the organiser has read by then stays read.
      </p>
      <ChoiceGroup
        label="The organiser is told"
        choices={SHARE_CHOICES.map((value) => ({ value, ...CHOICES[value] }))}
        chosen={[choice]}
        onChange={({ target }) => setChoice(SHARE_CHOICES.find((each) => each === target.value) ?? choice)}
      />
      <Disclosure summary="What that would be now">
        <WouldBeTold teamId={teamId} eventId={eventId} />
      </Disclosure>
      <SaveTrouble problem={choose.error ? problemOf(choose.error) : null} />
    </Dialog>
  );
}

/** Counted from the whole log of the event, so only for whoever chooses. */
function WouldBeTold({ teamId, eventId }: Pick<EditShareProps, 'teamId' | 'eventId'>) {
  const counted = useQuery(api.share.count.queryOptions({ teamId, eventId }));
  if (counted.isPending) return <LoadingState words="Counting …" />;
  if (counted.data === undefined) {
    return <LoadTrouble error={counted.error} onTryAgain={() => counted.refetch()} />;
  }
  if (counted.data.length === 0) return <p>No car is entered yet.</p>;
  return <CountedCars caption="What would be told of each car" cars={counted.data} />;
}
