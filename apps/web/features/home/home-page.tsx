'use client';

import { useQuery } from '@tanstack/react-query';
import { useSearchParams } from 'next/navigation';
import { EmptyState } from '@/components/empty-state';
import { LinkButton } from '@/components/link-button';
import { LoadingState } from '@/components/loading-state';
import { PageHeader } from '@/components/page-header';
import { Stack } from '@/components/stack';
import { api } from '@/lib/api';
import { useSession } from '@/lib/session';
import { HOME_ADDRESS, signInAddress } from '../events/addresses';
import { LoadTrouble } from '../events/trouble';
import { chooseTeam } from './choose-team';
import { HomeFrame } from './home-frame';
import { TeamHome } from './team-home';
import { Tenants } from './tenants';

/** What is mine: the team at once when there is only one, else the list to choose from. */
export function HomePage() {
  // Asked up here, so that none of this is in the static page: what the device kept may be shown before React wakes it up.
  const asked = useSearchParams().get('team');
  const session = useSession();
  if (session.isPending) return <Waiting />;
  if (session.isError && session.data === undefined) {
    return (
      <HomeFrame team={null}>
        <PageHeader title="Home" />
        <LoadTrouble wholePage error={session.error} onTryAgain={() => session.refetch()} />
      </HomeFrame>
    );
  }
  return session.data ? <Mine asked={asked} /> : <NotSignedIn />;
}

function Mine({ asked }: { asked: string | null }) {
  const mine = useQuery(api.team.mine.queryOptions());
  if (mine.isPending) return <Waiting />;
  if (mine.data === undefined) {
    return (
      <HomeFrame team={null}>
        <PageHeader title="Home" />
        <LoadTrouble wholePage error={mine.error} onTryAgain={() => mine.refetch()} />
      </HomeFrame>
    );
  }
  const team = chooseTeam(mine.data.teams, asked);
  return (
    <HomeFrame team={team}>
      {team ? <TeamHome team={team} /> : null}
      <Tenants mine={mine.data} shown={team} />
    </HomeFrame>
  );
}

function Waiting() {
  return (
    <HomeFrame team={null}>
      <LoadingState wholePage words="Fetching your teams …" />
    </HomeFrame>
  );
}

function NotSignedIn() {
  return (
    <HomeFrame team={null}>
      <PageHeader title="Home" />
      <EmptyState
        title="Your teams and events are here once you are signed in."
        action={
          <Stack across gap="small">
            <LinkButton href={signInAddress(HOME_ADDRESS)} look="main">
              Sign in
            </LinkButton>
            <LinkButton href="/sign-up/">Make an account</LinkButton>
          </Stack>
        }
      >
        Helpers need no account: open the link or scan the code that your team gave you.
      </EmptyState>
    </HomeFrame>
  );
}
