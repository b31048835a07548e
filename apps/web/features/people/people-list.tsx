'use client';

import type { TeamPerson } from '@halfshaft/contract';
import { useState } from 'react';
import { Button } from '@/components/button';
import { Stack } from '@/components/stack';
import { Table, type TableColumn } from '@/components/table';
import { orderPeople } from './order-people';
import { PasswordDialog } from './password-dialog';
import { RoleDialog } from './role-dialog';
import { ROLE_WORDS } from './role-words';
import { TakeOutDialog } from './take-out-dialog';
import { useEventNames } from './use-event-names';

interface PeopleListProps {
  teamId: string;
  people: readonly TeamPerson[];
  mayDecideRoles: boolean;
  /** Whoever looks is let in for one event: of people of other events nothing is known here. */
  isHelper: boolean;
}

/** A person with an account that is in. */
export type Member = TeamPerson & { membership: NonNullable<TeamPerson['membership']> };

type Asked = { what: 'role' | 'password' | 'takeOut'; member: Member } | null;

export function PeopleList({ teamId, people, mayDecideRoles, isHelper }: PeopleListProps) {
  const [asked, setAsked] = useState<Asked>(null);
  const eventName = useEventNames(teamId);
  const close = () => setAsked(null);
  const columns: TableColumn<TeamPerson>[] = [
    { key: 'name', heading: 'Name', leads: true, cell: (person) => person.name },
    { key: 'initials', heading: 'Initials', cell: (person) => person.initials },
    { key: 'role', heading: 'Role', cell: (person) => standingInWords(person, isHelper) },
    { key: 'for', heading: 'For', cell: (person) => scopeInWords(person, eventName) },
  ];
  if (mayDecideRoles) {
    columns.push({
      key: 'actions',
      heading: 'Change',
      cell: (person) => (isMember(person) ? <Actions member={person} onAsk={setAsked} /> : '–'),
    });
  }
  return (
    <>
      <Table
        caption="People of the team"
        captionHidden
        columns={columns}
        rows={orderPeople(people)}
        rowKey={(person) => person.personId}
      />
      {asked?.what === 'role' ? <RoleDialog teamId={teamId} member={asked.member} onClose={close} /> : null}
      {asked?.what === 'password' ? (
        <PasswordDialog teamId={teamId} member={asked.member} onClose={close} />
      ) : null}
      {asked?.what === 'takeOut' ? (
        <TakeOutDialog teamId={teamId} member={asked.member} onClose={close} />
      ) : null}
    </>
  );
}

function Actions({ member, onAsk }: { member: Member; onAsk: (asked: Asked) => void }) {
  return (
    <Stack across gap="small">
      <Button aria-label={`Role of ${member.name}`} onClick={() => onAsk({ what: 'role', member })}>
        Role
      </Button>
      <Button
        aria-label={`New password for ${member.name}`}
        onClick={() => onAsk({ what: 'password', member })}
      >
        New password
      </Button>
      <Button aria-label={`Take out ${member.name}`} onClick={() => onAsk({ what: 'takeOut', member })}>
        Take out
      </Button>
    </Stack>
  );
}

function isMember(person: TeamPerson): person is Member {
  return person.membership !== null && person.membership.revokedAt === null;
}

function standingInWords({ membership }: TeamPerson, toHelper: boolean): string {
  if (membership === null) return toHelper ? 'none for your event' : 'no account';
  return membership.revokedAt === null ? ROLE_WORDS[membership.role] : 'taken out';
}

function scopeInWords(person: TeamPerson, eventName: (eventId: string) => string): string {
  if (!isMember(person)) return '–';
  return person.membership.eventId === null ? 'whole team' : eventName(person.membership.eventId);
}
