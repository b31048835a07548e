'use client';

import { inviteRole } from '@halfshaft/contract';
import { useMutation, useQuery } from '@tanstack/react-query';
import { useForm } from 'react-hook-form';
import { Button } from '@/components/button';
import { ChoiceGroup } from '@/components/choice-group';
import { NumberField } from '@/components/number-field';
import { SelectField } from '@/components/select-field';
import { Sheet } from '@/components/sheet';
import { api, problemOf, queryClient } from '@/lib/api';
import { useKeptForm } from '@/lib/keep-typed';
import { SaveTrouble } from '../events/trouble';
import { InviteLink } from './invite-link';
import { type InviteValues, readInvite, WHOLE_TEAM } from './invite-values';
import styles from './people.module.css';
import { ROLE_HINTS, roleTitle } from './role-words';

interface InviteFormProps {
  teamId: string;
  mayDecideRoles: boolean;
}

const EMPTY: InviteValues = { role: 'mechanic', scope: '', days: '7' };

export function InviteForm({ teamId, mayDecideRoles }: InviteFormProps) {
  const form = useForm<InviteValues>({ defaultValues: EMPTY });
  const kept = useKeptForm(`invite.${teamId}`, form);
  const { data: events = [] } = useQuery(api.event.list.queryOptions({ teamId }));
  const make = useMutation(
    api.invite.create.mutationOptions({
      onSuccess: async () => {
        kept.clear();
        form.reset(EMPTY);
        await queryClient.invalidateQueries(api.invite.list.queryFilter({ teamId }));
      },
    }),
  );
  const submit = form.handleSubmit((values) => {
    const read = readInvite(teamId, values);
    if (read.ok) return make.mutate(read.input);
    for (const [field, message] of Object.entries(read.problems)) {
      form.setError(field as keyof InviteValues, { message }, { shouldFocus: true });
    }
  });
  const { errors } = form.formState;
  const roles = inviteRole.options.filter((role) => role !== 'manager' || mayDecideRoles).toReversed();

  return (
    <Sheet title="Invite by link or code">
      {make.data ? (
        <InviteLink invite={make.data} onAnother={() => make.reset()} />
      ) : (
        <form className={styles.form} noValidate onSubmit={submit}>
          <ChoiceGroup
            label="They come as"
            choices={roles.map((value) => ({ value, label: roleTitle(value), hint: ROLE_HINTS[value] }))}
            error={errors.role?.message}
            {...form.register('role')}
          />
          <SelectField
            label="For"
            hint="For one event they see that event only."
            unchosen="Choose"
            options={[
              ...events.map((event) => ({ value: event.eventId, label: event.name })),
              { value: WHOLE_TEAM, label: 'The whole team' },
            ]}
            error={errors.scope?.message}
            {...form.register('scope')}
          />
          <NumberField
            label="The link works for"
            unit="days"
            whole
            error={errors.days?.message}
            {...form.register('days')}
          />
          <SaveTrouble problem={make.error && problemOf(make.error)} />
          <div>
            <Button type="submit" look="main" busy={make.isPending} busyWords="Making the link …">
              Make the link
            </Button>
          </div>
        </form>
      )}
    </Sheet>
  );
}
