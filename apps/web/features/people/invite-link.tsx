'use client';

import { Button } from '@/components/button';
import { Stack } from '@/components/stack';
import { ShownLink } from './shown-link';
import { whenInWords } from './when-in-words';

interface InviteLinkProps {
  invite: { token: string; expiresAt: number };
  onAnother: () => void;
}

export function InviteLink({ invite, onAnother }: InviteLinkProps) {
  return (
    <Stack>
      <p>
        Let them scan the code or send them the link. It works until {whenInWords(invite.expiresAt)}, for as
        many people as have it, and is shown only now.
      </p>
      <ShownLink path={`/join/#${invite.token}`}>
        <Button look="quiet" onClick={onAnother}>
          Make another
        </Button>
      </ShownLink>
    </Stack>
  );
}
