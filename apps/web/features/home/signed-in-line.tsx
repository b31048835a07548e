'use client';

import { Stack } from '@/components/stack';
import { useSession } from '@/lib/session';
import { SignOutButton } from '../account/sign-out-button';

export function SignedInLine() {
  const { data: account } = useSession();
  if (!account) return null;
  return (
    <Stack across>
      <p>{account.isHelper ? 'You came by a link.' : `Signed in as ${account.name}, ${account.email}.`}</p>
      <SignOutButton />
    </Stack>
  );
}
