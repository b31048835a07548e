'use client';

import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { Button } from '@/components/button';
import { Dialog } from '@/components/dialog';
import { KEPT_FORMS } from '@/lib/keep-typed';
import { signOut, useSession } from '@/lib/session';
import { removeStoredBelow } from '@/lib/storage';

/** Signs out and forgets what was typed here, since the next person may hold the same phone. */
export function SignOutButton() {
  const router = useRouter();
  const session = useSession();
  const [asked, setAsked] = useState(false);
  const [busy, setBusy] = useState(false);

  async function leave() {
    setBusy(true);
    await signOut();
    removeStoredBelow(KEPT_FORMS);
    router.replace('/');
  }

  if (!session.data) return null;
  const { isHelper } = session.data;
  return (
    <>
      <Button look="quiet" onClick={() => setAsked(true)}>
        Sign out
      </Button>
      <Dialog
        open={asked}
        onClose={() => setAsked(false)}
        title="Sign out on this device?"
        closeWords="Stay signed in"
        actions={
          <Button look="main" busy={busy} busyWords="Signing out …" onClick={leave}>
            Sign out
          </Button>
        }
      >
        <p>Forms that were begun here and not sent are forgotten. What was sent stays with the team.</p>
        {isHelper ? (
          <p>You came by a link, without a password: to come back you need a new link from your team.</p>
        ) : null}
      </Dialog>
    </>
  );
}
