'use client';

import { useMutation } from '@tanstack/react-query';
import { Button } from '@/components/button';
import { Dialog } from '@/components/dialog';
import { api, problemOf, queryClient } from '@/lib/api';
import { SaveTrouble } from '../events/trouble';
import type { Member } from './people-list';

interface TakeOutDialogProps {
  teamId: string;
  member: Member;
  onClose: () => void;
}

export function TakeOutDialog({ teamId, member, onClose }: TakeOutDialogProps) {
  const takeOut = useMutation(
    api.people.revoke.mutationOptions({
      onSuccess: async () => {
        await queryClient.invalidateQueries(api.people.list.queryFilter({ teamId }));
        onClose();
      },
    }),
  );
  const { membershipId } = member.membership;
  return (
    <Dialog
      open
      onClose={onClose}
      title={`Take ${member.name} out of the team?`}
      closeWords="Keep in the team"
      actions={
        <Button
          look="main"
          busy={takeOut.isPending}
          busyWords="Taking out …"
          onClick={() => takeOut.mutate({ teamId, membershipId })}
        >
          Take out
        </Button>
      }
    >
      <p>From now on {member.name} sees nothing of the team and can record nothing more.</p>
      <p>
        What they did, found and signed stays in the log under their name. What they recorded without a
        connection before now still counts when it arrives, and is marked.
      </p>
      <SaveTrouble problem={takeOut.error && problemOf(takeOut.error)} />
    </Dialog>
  );
}
