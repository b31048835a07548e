'use client';

import { useMutation } from '@tanstack/react-query';
import { Button } from '@/components/button';
import { Dialog } from '@/components/dialog';
import { Stack } from '@/components/stack';
import { api, problemOf } from '@/lib/api';
import { SaveTrouble } from '../events/trouble';
import type { Member } from './people-list';
import { ShownLink } from './shown-link';
import { whenInWords } from './when-in-words';

interface PasswordDialogProps {
  teamId: string;
  member: Member;
  onClose: () => void;
}

/** A link for a member who forgot the password. */
export function PasswordDialog({ teamId, member, onClose }: PasswordDialogProps) {
  const make = useMutation(api.password.makeLink.mutationOptions());
  const { membershipId } = member.membership;
  return (
    <Dialog
      open
      onClose={onClose}
      title={`New password for ${member.name}`}
      closeWords={make.data ? 'Done' : 'Leave as it is'}
      actions={
        make.data ? null : (
          <Button
            look="main"
            busy={make.isPending}
            busyWords="Making the link …"
            onClick={() => make.mutate({ teamId, membershipId })}
          >
            Make the link
          </Button>
        )
      }
    >
      {make.data ? (
        <Stack>
          <p>
            For {member.name} alone: whoever opens it first sets the password. It works once, until{' '}
            {whenInWords(make.data.expiresAt)}, and is shown only now.
          </p>
          <ShownLink path={`/password/#${make.data.token}`} />
        </Stack>
      ) : (
        <>
          <p>
            {member.name} forgot the password? With this link they set a new one. The old one then counts no
            more, and they are signed out on every device.
          </p>
          <SaveTrouble problem={make.error && problemOf(make.error)} />
        </>
      )}
    </Dialog>
  );
}
