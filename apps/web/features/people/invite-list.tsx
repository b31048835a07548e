'use client';

import type { listInvitesOutput, TeamPerson } from '@halfshaft/contract';
import { useMutation, useQuery } from '@tanstack/react-query';
import type { z } from 'zod';
import { Button } from '@/components/button';
import { Disclosure } from '@/components/disclosure';
import { LoadingState } from '@/components/loading-state';
import { Sheet } from '@/components/sheet';
import { Table, type TableColumn } from '@/components/table';
import { api, problemOf, queryClient } from '@/lib/api';
import { useNow } from '@/lib/use-now';
import { LoadTrouble, SaveTrouble } from '../events/trouble';
import { isOpen } from './is-open';
import { ROLE_WORDS, roleTitle } from './role-words';
import { useEventNames } from './use-event-names';
import { whenInWords } from './when-in-words';

type Invite = z.infer<typeof listInvitesOutput>[number];

interface InviteListProps {
  teamId: string;
  people: readonly TeamPerson[];
}

export function InviteList({ teamId, people }: InviteListProps) {
  const invites = useQuery(api.invite.list.queryOptions({ teamId }));
  const now = useNow();
  if (invites.isPending || now === null) return <LoadingState words="Fetching the invitations …" />;
  if (invites.data === undefined) {
    return <LoadTrouble error={invites.error} onTryAgain={() => invites.refetch()} />;
  }
  const open = invites.data.filter((invite) => isOpen(invite, now));
  const old = invites.data.filter((invite) => !isOpen(invite, now));
  return (
    <Sheet title="Invitations">
      {open.length > 0 ? (
        <InviteTable caption="Links that work" teamId={teamId} people={people} invites={open} mayTakeBack />
      ) : (
        <p>No link works at the moment.</p>
      )}
      {old.length > 0 ? (
        <Disclosure summary={`Links that no longer work: ${old.length}`}>
          <InviteTable caption="Links that no longer work" teamId={teamId} people={people} invites={old} />
        </Disclosure>
      ) : null}
    </Sheet>
  );
}

interface InviteTableProps extends InviteListProps {
  caption: string;
  invites: readonly Invite[];
  mayTakeBack?: boolean;
}

function InviteTable({ caption, teamId, people, invites, mayTakeBack = false }: InviteTableProps) {
  const eventName = useEventNames(teamId);
  const takeBack = useMutation(
    api.invite.revoke.mutationOptions({
      onSuccess: () => queryClient.invalidateQueries(api.invite.list.queryFilter({ teamId })),
    }),
  );
  const columns: TableColumn<Invite>[] = [
    { key: 'role', heading: 'As', leads: true, cell: ({ role }) => roleTitle(role) },
    {
      key: 'for',
      heading: 'For',
      cell: ({ eventId }) => (eventId === null ? 'whole team' : eventName(eventId)),
    },
    {
      key: 'by',
      heading: 'Made by',
      cell: ({ madeBy }) => people.find((person) => person.personId === madeBy)?.name ?? '–',
    },
    { key: 'until', heading: mayTakeBack ? 'Works until' : 'Ended', cell: endInWords },
  ];
  if (mayTakeBack) {
    columns.push({
      key: 'actions',
      heading: 'Change',
      cell: ({ inviteId, role }) => (
        <Button
          aria-label={`Take back the link for ${ROLE_WORDS[role]}`}
          busy={takeBack.isPending && takeBack.variables.inviteId === inviteId}
          busyWords="Taking back …"
          onClick={() => takeBack.mutate({ teamId, inviteId })}
        >
          Take back
        </Button>
      ),
    });
  }
  return (
    <>
      <Table
        caption={caption}
        captionHidden
        columns={columns}
        rows={invites}
        rowKey={(invite) => invite.inviteId}
      />
      <SaveTrouble problem={takeBack.error && problemOf(takeBack.error)} />
    </>
  );
}

function endInWords({ revokedAt, expiresAt }: Invite): string {
  return revokedAt === null ? whenInWords(expiresAt) : `taken back ${whenInWords(revokedAt)}`;
}
