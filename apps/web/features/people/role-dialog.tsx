'use client';

import { type TeamRole, teamRole } from '@halfshaft/contract';
import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { Button } from '@/components/button';
import { ChoiceGroup } from '@/components/choice-group';
import { Dialog } from '@/components/dialog';
import { api, problemOf, queryClient } from '@/lib/api';
import { SaveTrouble } from '../events/trouble';
import type { Member } from './people-list';
import { ROLE_HINTS, roleTitle } from './role-words';

interface RoleDialogProps {
  teamId: string;
  member: Member;
  onClose: () => void;
}

export function RoleDialog({ teamId, member, onClose }: RoleDialogProps) {
  const { membershipId } = member.membership;
  const [role, setRole] = useState<TeamRole>(member.membership.role);
  const save = useMutation(
    api.people.setRole.mutationOptions({
      onSuccess: async () => {
        await Promise.all([
          queryClient.invalidateQueries(api.people.list.queryFilter({ teamId })),
          queryClient.invalidateQueries(api.team.mine.queryFilter()),
        ]);
        onClose();
      },
    }),
  );
  return (
    <Dialog
      open
      onClose={onClose}
      title={`Role of ${member.name}`}
      closeWords="Leave as it is"
      actions={
        <Button
          look="main"
          busy={save.isPending}
          busyWords="Saving …"
          onClick={() => save.mutate({ teamId, membershipId, role })}
        >
          Save the role
        </Button>
      }
    >
      <ChoiceGroup
        label="Role"
        choices={teamRole.options.map((value) => ({
          value,
          label: roleTitle(value),
          hint: ROLE_HINTS[value],
        }))}
        chosen={[role]}
        onChange={(event) => setRole(teamRole.parse(event.target.value))}
      />
      <SaveTrouble problem={save.error && problemOf(save.error)} />
    </Dialog>
  );
}
