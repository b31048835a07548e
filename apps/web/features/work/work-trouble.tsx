'use client';

import { usePathname, useSearchParams } from 'next/navigation';
import { useEffect, useState } from 'react';
import { LinkButton } from '@/components/link-button';
import { Notice } from '@/components/notice';
import { signInAddress } from '../events/addresses';
import type { EventWork } from './use-event-work';

const PATIENCE_MILLIS = 5000;

/**
 * Trouble while the screen still shows what is known. A lost connection is told by the bar of the frame. Each screen puts
 * it where it is seen: in the bay that is the lower edge.
 */
export function WorkTrouble({ work }: { work: EventWork }) {
  const { problem, status, waiting, isKept } = work;
  const told = problem !== null && status !== 'offline';
  return (
    <>
      {isKept || waiting === 0 ? null : (
        <Notice kind="warning" title="Do not close this page" spoken>
          <p>This browser keeps nothing. What waits is lost when the page is closed before it was sent.</p>
        </Notice>
      )}
      {told ? (
        <Notice kind="problem" title={waiting > 0 ? 'Not sent' : 'Out of date'} spoken>
          <p>{problem.message}</p>
          {waiting > 0 ? <p>What you entered is kept on this phone.</p> : null}
          {problem.code === 'signInNeeded' ? <SignInLink /> : null}
        </Notice>
      ) : null}
      {status === 'behind' && !told ? <BehindNotice /> : null}
    </>
  );
}

/** Only after a while: at the start, and when a server starts anew, the stream is back at once. */
function BehindNotice() {
  const [late, setLate] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setLate(true), PATIENCE_MILLIS);
    return () => clearTimeout(timer);
  }, []);
  if (!late) return null;
  return (
    <Notice title="Not live just now">
      <p>What others do shows up here every 20 seconds. What you do is sent at once.</p>
    </Notice>
  );
}

/** Sign in, and come back to this screen. */
export function SignInLink() {
  const pathname = usePathname();
  const query = useSearchParams().toString();
  return (
    <LinkButton href={signInAddress(query === '' ? pathname : `${pathname}?${query}`)}>Sign in</LinkButton>
  );
}
