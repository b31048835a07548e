'use client';

import { useState } from 'react';
import { Button } from '@/components/button';
import { Stack } from '@/components/stack';
import { TextField } from '@/components/text-field';
import { QrCode } from './qr-code';
import { whenInWords } from './when-in-words';

interface InviteLinkProps {
  invite: { token: string; expiresAt: number };
  onAnother: () => void;
}

/** The link is told once: only a fingerprint of it is kept on the server. */
export function InviteLink({ invite, onAnother }: InviteLinkProps) {
  const link = `${window.location.origin}/join/#${invite.token}`;
  const [copied, setCopied] = useState(false);

  async function copy() {
    // Not there on a plain-http address; the link can still be marked and copied by hand.
    await navigator.clipboard.writeText(link);
    setCopied(true);
  }

  return (
    <Stack>
      <p>
        Let them scan the code or send them the link. It works until {whenInWords(invite.expiresAt)}, for as
        many people as have it, and is shown only now.
      </p>
      <QrCode link={link} label="The link as a code to scan" />
      <TextField label="Link" readOnly value={link} onFocus={(event) => event.target.select()} />
      <Stack across gap="small">
        {'clipboard' in navigator && navigator.clipboard ? (
          <Button onClick={copy}>{copied ? 'Copied' : 'Copy the link'}</Button>
        ) : null}
        <Button look="quiet" onClick={onAnother}>
          Make another
        </Button>
      </Stack>
    </Stack>
  );
}
