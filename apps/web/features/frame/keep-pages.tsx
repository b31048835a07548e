'use client';

import { useEffect, useState } from 'react';
import { Button } from '@/components/button';
import { Notice } from '@/components/notice';
import { behindFirstScreen } from '@/lib/first-screen';

const WORKER = '/service-worker.js';

/**
 * Keeps the pages on this device, so that they open without a network, and says when a newer build has been fetched.
 * Over plain http from another machine browsers allow none of it: the pages then work as ever, but only while the server
 * is reached when they are opened.
 */
export function KeepPages() {
  const [waiting, setWaiting] = useState<ServiceWorker | null>(null);
  useEffect(() => {
    let stopped = false;
    // All pages of the build are fetched with it: on a slow network they would stand in the way of this one.
    const takeBack = behindFirstScreen(() => keepPages((worker) => stopped || setWaiting(worker)));
    return () => {
      stopped = true;
      takeBack();
    };
  }, []);
  if (!waiting) return null;
  return (
    <Notice title="A newer version is ready">
      <p>It is used from the next time all pages are closed. What you entered is kept either way.</p>
      <Button onClick={() => takeOver(waiting)}>Use it now</Button>
    </Notice>
  );
}

function keepPages(onWaiting: (worker: ServiceWorker) => void): void {
  if (!('serviceWorker' in navigator)) return;
  navigator.serviceWorker
    .register(WORKER)
    .then((registration) => {
      const tell = () => {
        // Without a page of an older build there is nothing newer: this is the first time.
        if (registration.waiting && navigator.serviceWorker.controller) onWaiting(registration.waiting);
      };
      tell();
      registration.addEventListener('updatefound', () => {
        const { installing } = registration;
        installing?.addEventListener('statechange', tell);
      });
    })
    .catch(() => undefined); // blocked site data, a private window: the pages live from the network
}

/** The page is drawn anew by the newer build once that has taken over. */
function takeOver(worker: ServiceWorker): void {
  navigator.serviceWorker.addEventListener('controllerchange', () => window.location.reload(), {
    once: true,
  });
  worker.postMessage({ type: 'SKIP_WAITING' });
}
