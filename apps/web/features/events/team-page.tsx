'use client';

import { useQuery } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { Stack } from '@/components/stack';
import { api } from '@/lib/api';
import { PageFrame } from '../frame/page-frame';
import {
  carsAddress,
  HOME_ADDRESS,
  newEventAddress,
  peopleAddress,
  reliabilityAddress,
  teamAddress,
} from './addresses';
import { BadAddress, NotYours } from './trouble';
import { useQueryId } from './use-query-id';
import { useTeam } from './use-team';

/** The frame around a page of one team; the page itself is only made once the team is named. */
export function TeamPage({ children }: { children: (teamId: string) => ReactNode }) {
  const teamId = useQueryId('team');
  if (teamId === null) {
    return (
      <PageFrame>
        <BadAddress />
      </PageFrame>
    );
  }
  return <TeamFrame teamId={teamId}>{children(teamId)}</TeamFrame>;
}

function TeamFrame({ teamId, children }: { teamId: string; children: ReactNode }) {
  const team = useTeam(teamId);
  const mine = useQuery(api.team.mine.queryOptions());
  const isStranger = mine.data !== undefined && team === null;
  const links = [
    { href: teamAddress(teamId), label: 'Home' },
    { href: carsAddress(teamId), label: 'Cars' },
    ...(team?.mayManage ? [{ href: newEventAddress(teamId), label: 'New event' }] : []),
    { href: peopleAddress(teamId), label: 'People' },
    ...(team?.mayManage ? [{ href: reliabilityAddress(teamId), label: 'Failures' }] : []),
  ];
  return (
    <PageFrame homeHref={HOME_ADDRESS} where={team?.name} links={links}>
      <Stack gap="large">{isStranger ? <NotYours /> : children}</Stack>
    </PageFrame>
  );
}
