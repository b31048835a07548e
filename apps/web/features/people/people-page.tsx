'use client';

import type { TeamPerson } from '@halfshaft/contract';
import { useQuery } from '@tanstack/react-query';
import { LoadingState } from '@/components/loading-state';
import { PageHeader } from '@/components/page-header';
import { api } from '@/lib/api';
import { TeamPage } from '../events/team-page';
import { LoadTrouble } from '../events/trouble';
import { type OwnTeam, useTeam } from '../events/use-team';
import { AddPerson } from './add-person';
import { InviteForm } from './invite-form';
import { InviteList } from './invite-list';
import { PeopleList } from './people-list';

export function PeoplePage() {
  return <TeamPage>{(teamId) => <People teamId={teamId} />}</TeamPage>;
}

function People({ teamId }: { teamId: string }) {
  const team = useTeam(teamId);
  const people = useQuery(api.people.list.queryOptions({ teamId }));
  return (
    <>
      <PageHeader title="People" above={team?.name} />
      {people.isPending ? <LoadingState words="Fetching the people …" /> : null}
      {people.isError && people.data === undefined ? (
        <LoadTrouble error={people.error} onTryAgain={() => people.refetch()} />
      ) : null}
      {people.data ? <Loaded teamId={teamId} team={team} people={people.data} /> : null}
    </>
  );
}

interface LoadedProps {
  teamId: string;
  team: OwnTeam | null;
  people: TeamPerson[];
}

function Loaded({ teamId, team, people }: LoadedProps) {
  const mayManage = team?.mayManage ?? false;
  const mayDecideRoles = mayManage && team?.role === 'admin';
  return (
    <>
      <PeopleList
        teamId={teamId}
        people={people}
        mayDecideRoles={mayDecideRoles}
        isHelper={team?.isHelper ?? false}
      />
      {mayManage ? (
        <>
          <InviteForm teamId={teamId} mayDecideRoles={mayDecideRoles} />
          <InviteList teamId={teamId} people={people} />
          <AddPerson teamId={teamId} />
        </>
      ) : null}
    </>
  );
}
