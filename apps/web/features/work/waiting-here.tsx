'use client';

import { useEffect } from 'react';
import { Notice } from '@/components/notice';
import { useDevicePhotos } from '../photos/use-device-photos';
import { holdStore } from './hold-store';
import { useDeviceOutbox } from './use-device-outbox';
import { partsOfPlace } from './waiting-action';
import { countByName, entriesOf, photosOfPerson } from './waiting-in-words';

/**
 * Says what waits on this device, of whoever uses it, and sends what is the signed-in person's own without the event having
 * to be opened.
 */
export function WaitingHere({ signedIn }: { signedIn: boolean }) {
  const waiting = useDeviceOutbox() ?? [];
  const photos = useDevicePhotos();
  const places = [...new Set([...waiting, ...photos].map(({ place }) => place))].sort().join(' ');
  useEffect(() => {
    if (!signedIn) return;
    const parts = places.split(' ').map(partsOfPlace);
    const held = parts.map((part) => (part ? holdStore(part.teamId, part.eventId) : () => undefined));
    return () => {
      for (const letGo of held) letGo();
    };
  }, [places, signedIn]);
  const whose = [
    ...countByName(waiting).map((each) => ({ ...each, words: entriesOf(each.name, each.count) })),
    ...countByName(photos).map((each) => ({ ...each, words: photosOfPerson(each.name, each.count) })),
  ];
  if (whose.length === 0) return null;
  return (
    <Notice title="Not sent yet">
      {whose.map(({ name, count, words }) => (
        <p key={words}>
          {words} {count === 1 ? 'waits' : 'wait'} on this phone. {count === 1 ? 'It is' : 'They are'} sent as
          soon as {name} is signed in here and there is a connection.
        </p>
      ))}
    </Notice>
  );
}
