'use client';

import Link from 'next/link';
import { type ComponentProps, useSyncExternalStore } from 'react';
import { behindFirstScreen, hasFirstScreen } from '@/lib/first-screen';

/**
 * A link to another page of the product. The pages it may lead to are fetched beforehand, but not before the one that was
 * asked for stands: on a slow network three links took longer than all of its own.
 */
export function PageLink(props: ComponentProps<typeof Link>) {
  const stands = useSyncExternalStore(behindFirstScreen, hasFirstScreen, () => false);
  return <Link {...props} prefetch={stands ? null : false} />;
}
