'use client';

import { inviteToken } from '@halfshaft/contract';
import { useQuery } from '@tanstack/react-query';
import { ErrorState } from '@/components/error-state';
import { LinkButton } from '@/components/link-button';
import { LoadingState } from '@/components/loading-state';
import { PageHeader } from '@/components/page-header';
import { api } from '@/lib/api';
import { useSession } from '@/lib/session';
import { HOME_ADDRESS } from '../events/addresses';
import { LoadTrouble } from '../events/trouble';
import { ROLE_WORDS } from '../people/role-words';
import styles from './account.module.css';
import { JoinForm } from './join-form';
import { useHash } from './use-hash';

/** The page behind an invitation's link or code. The token stands after the #, so that it reaches no server log. */
export function Join() {
  const token = useHash();
  if (token === null) return <LoadingState words="Reading the link …" />;
  const read = inviteToken.safeParse(token);
  if (read.success) return <Invitation token={read.data} />;
  return <NoWay sentence={read.error.issues[0]?.message ?? 'That link is not complete.'} />;
}

function Invitation({ token }: { token: string }) {
  const session = useSession();
  const look = useQuery(api.invite.look.queryOptions({ token }));
  if (look.isPending || session.isPending) return <LoadingState words="Looking at the invitation …" />;
  if (look.data === undefined) {
    return (
      <div className={styles.page}>
        <PageHeader title="Join a team" />
        <LoadTrouble error={look.error} onTryAgain={() => look.refetch()} />
      </div>
    );
  }
  const { teamName, role, eventName, problem } = look.data;
  if (problem !== null) return <NoWay sentence={problem} />;
  return (
    <div className={styles.page}>
      <PageHeader
        title={`Join ${teamName}`}
        facts={[`as ${ROLE_WORDS[role]}`, eventName === null ? 'for the whole team' : `for ${eventName}`]}
      />
      <JoinForm token={token} account={session.data ?? null} />
    </div>
  );
}

function NoWay({ sentence }: { sentence: string }) {
  return (
    <div className={styles.page}>
      <PageHeader title="Join a team" />
      <ErrorState sentence={sentence}>
        <LinkButton href={HOME_ADDRESS}>To your teams</LinkButton>
      </ErrorState>
    </div>
  );
}
