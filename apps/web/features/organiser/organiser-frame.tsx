'use client';

import type { ReactNode } from 'react';
import { Stack } from '@/components/stack';
import { HOME_ADDRESS } from '../events/addresses';
import { BadAddress } from '../events/trouble';
import { useQueryId } from '../events/use-query-id';
import { PageFrame } from '../frame/page-frame';
import { failingAddress, organiserAddress } from './organiser-addresses';

/** The frame of an organiser's pages; what it holds is drawn when the address names an organiser. */
export function OrganiserFrame({ children }: { children: (organiserId: string) => ReactNode }) {
  const organiserId = useQueryId('organiser');
  const links =
    organiserId === null
      ? []
      : [
          { href: HOME_ADDRESS, label: 'Home' },
          { href: organiserAddress(organiserId), label: 'Events' },
          { href: failingAddress(organiserId), label: 'Failures' },
        ];
  return (
    <PageFrame homeHref={HOME_ADDRESS} links={links}>
      <Stack gap="large">{organiserId === null ? <BadAddress /> : children(organiserId)}</Stack>
    </PageFrame>
  );
}
