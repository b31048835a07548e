'use client';

import type { ReactNode } from 'react';
import { Stack } from '@/components/stack';
import { useSession } from '@/lib/session';
import {
  carsAddress,
  HOME_ADDRESS,
  newEventAddress,
  peopleAddress,
  reliabilityAddress,
} from '../events/addresses';
import { PageFrame } from '../frame/page-frame';
import { WaitingHere } from '../work/waiting-here';
import type { MyTeam } from './choose-team';
import { mayManageTeam } from './may-manage-team';
import { SignedInLine } from './signed-in-line';

/** The frame around what is mine, with the ways into the team that is shown. */
export function HomeFrame({ team, children }: { team: MyTeam | null; children: ReactNode }) {
  const links = team ? linksOf(team) : [];
  const session = useSession();
  return (
    <PageFrame homeHref={HOME_ADDRESS} where={team?.name} links={links}>
      <Stack gap="large">
        <WaitingHere signedIn={session.data != null} />
        {children}
        <SignedInLine />
      </Stack>
    </PageFrame>
  );
}

function linksOf(team: MyTeam) {
  return [
    { href: HOME_ADDRESS, label: 'Home' },
    { href: carsAddress(team.teamId), label: 'Cars' },
    ...(mayManageTeam(team) ? [{ href: newEventAddress(team.teamId), label: 'New event' }] : []),
    { href: peopleAddress(team.teamId), label: 'People' },
    ...(mayManageTeam(team) ? [{ href: reliabilityAddress(team.teamId), label: 'Failures' }] : []),
  ];
}
