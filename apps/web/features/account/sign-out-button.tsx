'use client';

import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { Button } from '@/components/button';
import { Dialog } from '@/components/dialog';
import { Notice } from '@/components/notice';
import { KEPT_FORMS } from '@/lib/keep-typed';
import { signOut, useSession } from '@/lib/session';
import { removeStoredBelow } from '@/lib/storage';
import { forgetDraftPhotos } from '../photos/draft-photo-box';
import { useDevicePhotos } from '../photos/use-device-photos';
import { deviceBox, devicePhotos } from '../work/hold-store';
import { useDeviceOutbox } from '../work/use-device-outbox';
import { UnsentHere } from './unsent-here';

/** Signs out and forgets what was typed here, since the next person may hold the same phone. */
export function SignOutButton() {
  const router = useRouter();
  const session = useSession();
  const waiting = useDeviceOutbox() ?? [];
  const photos = useDevicePhotos();
  const unsent = waiting.length + photos.length;
  const [asked, setAsked] = useState(false);
  const [busy, setBusy] = useState(false);
  const [throwsAway, setThrowsAway] = useState(false);
  const [problem, setProblem] = useState<string | null>(null);

  async function leave() {
    setBusy(true);
    const answer = await signOut();
    if (!answer.ok) {
      setBusy(false);
      return setProblem(answer.sentence);
    }
    if (throwsAway) await Promise.all([deviceBox.clear(), devicePhotos.clear()]);
    removeStoredBelow(KEPT_FORMS);
    await forgetDraftPhotos().catch(() => undefined); // a phone without a database has kept none
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
            {wordsFor(unsent, throwsAway)}
          </Button>
        }
      >
        {problem === null ? null : (
          <Notice kind="problem" spoken>
            <p>{problem}</p>
          </Notice>
        )}
        {unsent === 0 ? null : (
          <UnsentHere
            waiting={waiting}
            photos={photos}
            isHelper={isHelper}
            throwsAway={throwsAway}
            onChoose={setThrowsAway}
          />
        )}
        <p>Forms that were begun here and not sent are forgotten. What was sent stays with the team.</p>
        {isHelper ? (
          <p>You came by a link, without a password: to come back you need a new link from your team.</p>
        ) : null}
      </Dialog>
    </>
  );
}

function wordsFor(waiting: number, throwsAway: boolean): string {
  if (waiting === 0) return 'Sign out';
  if (throwsAway) return 'Throw away and sign out';
  return waiting === 1 ? 'Sign out, keep it' : 'Sign out, keep them';
}
