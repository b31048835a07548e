'use client';

import { usePathname, useSearchParams } from 'next/navigation';
import { useEffect, useState } from 'react';
import { LinkButton } from '@/components/link-button';
import { Notice } from '@/components/notice';
import { useStorageRoom } from '@/lib/storage-room';
import { signInAddress } from '../events/addresses';
import type { EventWork } from './use-event-work';

const PATIENCE_MILLIS = 5000;
/** While a copy of the event is on the screen, the server's plain "does not exist" would be no help. */
const NO_LONGER_YOURS =
  'You are no longer in this team, or the event was taken away. You see what this phone knew before; ask the manager.';
const BYTES_IN_MEGABYTE = 1_000_000;

/**
 * Trouble while the screen still shows what is known. A lost connection is told by the bar of the frame. Each screen puts
 * it where it is seen: in the bay that is the lower edge.
 */
export function WorkTrouble({ work }: { work: EventWork }) {
  const { problem, status, waiting, unkept } = work;
  const told = problem !== null && status !== 'offline';
  return (
    <>
      {unkept > 0 ? <UnkeptNotice count={unkept} /> : <RoomNotice waiting={waiting} />}
      {told ? (
        <Notice kind="problem" title={waiting > 0 ? 'Not sent' : 'Out of date'} spoken>
          <p>{problem.code === 'unknown' ? NO_LONGER_YOURS : problem.message}</p>
          {waiting > 0 ? <p>What you entered is kept on this phone.</p> : null}
          {problem.code === 'signInNeeded' ? <SignInLink /> : null}
        </Notice>
      ) : null}
      {status === 'behind' && !told ? <BehindNotice /> : null}
    </>
  );
}

/** The browser refused to store: no room, or storage that is forbidden. */
function UnkeptNotice({ count }: { count: number }) {
  return (
    <Notice kind="warning" title="Do not close this page" spoken>
      <p>
        This phone has no room to keep {count === 1 ? '1 entry' : `${count} entries`}. Closed before it was
        sent, this page would take {count === 1 ? 'it' : 'them'} along. Free some room on the phone, or find a
        connection.
      </p>
    </Notice>
  );
}

function RoomNotice({ waiting }: { waiting: number }) {
  const room = useStorageRoom(waiting);
  if (!room?.isLow) return null;
  const megabytes = Math.floor(room.freeBytes / BYTES_IN_MEGABYTE);
  return (
    <Notice kind="warning" title="This phone is nearly full">
      <p>
        There is room for about {megabytes} MB. Free some before it is gone: after that, nothing you enter
        without a connection can be kept.
      </p>
      {room.isPersistent ? null : (
        <p>The browser may also clear what it keeps when the phone runs out of room.</p>
      )}
    </Notice>
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
