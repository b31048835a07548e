'use client';

import type { MyTenants } from '@halfshaft/contract';
import { Disclosure } from '@/components/disclosure';
import { EmptyState } from '@/components/empty-state';
import { LinkButton } from '@/components/link-button';
import { PageHeader } from '@/components/page-header';
import { PageLink } from '@/components/page-link';
import { Sheet } from '@/components/sheet';
import { useSession } from '@/lib/session';
import { BRING_IN_ADDRESS, teamAddress } from '../events/addresses';
import { ROLE_WORDS } from '../people/role-words';
import type { MyTeam } from './choose-team';
import { MakeOrganiser } from './make-organiser';
import { MakeTeam } from './make-team';
import styles from './tenants.module.css';

interface TenantsProps {
  mine: MyTenants;
  /** The team that stands above already. */
  shown: MyTeam | null;
}

/** All teams and organisers one belongs to, and making new ones. */
export function Tenants({ mine, shown }: TenantsProps) {
  const { data: account } = useSession();
  const { teams, organisers } = mine;
  const others = teams.filter((team) => team.teamId !== shown?.teamId);
  const hasNone = teams.length === 0 && organisers.length === 0;
  return (
    <>
      {shown ? null : <PageHeader title={hasNone ? 'Welcome' : 'Yours'} />}
      {hasNone ? (
        <EmptyState title="You are in no team yet.">
          Make one below, or open the link that your team gave you.
        </EmptyState>
      ) : null}
      {others.length > 0 ? (
        <LinkList
          title={shown ? 'Other teams' : 'Teams'}
          links={others.map((team) => ({
            href: teamAddress(team.teamId),
            name: team.name,
            detail: ROLE_WORDS[team.role],
          }))}
        />
      ) : null}
      {organisers.length > 0 ? (
        <LinkList
          title="Organisers"
          links={organisers.map(({ organiserId, name }) => ({
            href: `/organiser/?organiser=${organiserId}`,
            name,
            detail: 'publishes itineraries',
          }))}
        />
      ) : null}
      {account && !account.isHelper ? (
        <div>
          <Disclosure summary="Make a team" startOpen={hasNone}>
            <MakeTeam personName={account.name} />
          </Disclosure>
          <Disclosure summary="Make an organiser, to publish itineraries for all teams">
            <MakeOrganiser />
          </Disclosure>
          <Disclosure summary="Bring an event in from another server">
            <LinkButton href={BRING_IN_ADDRESS}>Choose its file</LinkButton>
          </Disclosure>
        </div>
      ) : null}
    </>
  );
}

interface ListedLink {
  href: string;
  name: string;
  detail: string;
}

function LinkList({ title, links }: { title: string; links: readonly ListedLink[] }) {
  return (
    <Sheet title={title}>
      <ul className={styles.list}>
        {links.map(({ href, name, detail }) => (
          <li key={href}>
            <PageLink className={styles.link} href={href}>
              {name}
            </PageLink>{' '}
            <span className={styles.detail}>{detail}</span>
          </li>
        ))}
      </ul>
    </Sheet>
  );
}
