'use client';

import { createTeamInput } from '@halfshaft/contract';
import { zodResolver } from '@hookform/resolvers/zod';
import { useMutation } from '@tanstack/react-query';
import { useRouter } from 'next/navigation';
import { useForm } from 'react-hook-form';
import { Button } from '@/components/button';
import { TextField } from '@/components/text-field';
import { api, problemOf, queryClient } from '@/lib/api';
import { useKeptForm } from '@/lib/keep-typed';
import { teamAddress } from '../events/addresses';
import { SaveTrouble } from '../events/trouble';
import styles from './make.module.css';

/** A new team with oneself as its admin. */
export function MakeTeam({ personName }: { personName: string }) {
  const router = useRouter();
  const form = useForm({ resolver: zodResolver(createTeamInput), defaultValues: { name: '', personName } });
  const kept = useKeptForm('team', form);
  const make = useMutation(
    api.team.create.mutationOptions({
      onSuccess: async ({ teamId }) => {
        kept.clear();
        form.reset({ name: '', personName });
        await queryClient.invalidateQueries(api.team.mine.queryFilter());
        router.push(teamAddress(teamId));
      },
    }),
  );
  const { errors } = form.formState;
  return (
    <form className={styles.form} noValidate onSubmit={form.handleSubmit((values) => make.mutate(values))}>
      <TextField
        label="Name of the team"
        autoComplete="organization"
        error={errors.name?.message}
        {...form.register('name')}
      />
      <TextField
        label="Your name, as the team knows you"
        autoComplete="name"
        error={errors.personName?.message}
        {...form.register('personName')}
      />
      <SaveTrouble problem={make.error && problemOf(make.error)} />
      <div>
        <Button type="submit" busy={make.isPending} busyWords="Making the team …">
          Make the team
        </Button>
      </div>
    </form>
  );
}
