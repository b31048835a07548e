'use client';

import { type ReactNode, useState } from 'react';
import { Button } from '@/components/button';
import { Stack } from '@/components/stack';
import { TextField } from '@/components/text-field';
import { QrCode } from './qr-code';

interface ShownLinkProps {
  /** Beginning with a slash. */
  path: string;
  /** What else may be done, beside the button that copies. */
  children?: ReactNode;
}

/** A link to hand over: as a code to scan and as text. It is told once: the server keeps only a fingerprint of it. */
export function ShownLink({ path, children }: ShownLinkProps) {
  const link = window.location.origin + path;
  const [copied, setCopied] = useState(false);

  async function copy() {
    // Not there on a plain-http address; the link can still be marked and copied by hand.
    await navigator.clipboard.writeText(link);
    setCopied(true);
  }

  return (
    <>
      <QrCode link={link} label="The link as a code to scan" />
      <TextField label="Link" readOnly value={link} onFocus={(event) => event.target.select()} />
      <Stack across gap="small">
        {'clipboard' in navigator && navigator.clipboard ? (
          <Button onClick={copy}>{copied ? 'Copied' : 'Copy the link'}</Button>
        ) : null}
        {children}
      </Stack>
    </>
  );
}
