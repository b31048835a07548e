'use client';

import { createOrganiserInput } from '@halfshaft/contract';
import { zodResolver } from '@hookform/resolvers/zod';
import { useMutation } from '@tanstack/react-query';
import { useRouter } from 'next/navigation';
import { useForm } from 'react-hook-form';
import { Button } from '@/components/button';
import { TextField } from '@/components/text-field';
import { api, problemOf, queryClient } from '@/lib/api';
import { useKeptForm } from '@/lib/keep-typed';
import { SaveTrouble } from '../events/trouble';
import styles from './make.module.css';

export function MakeOrganiser() {
  const router = useRouter();
  const form = useForm({ resolver: zodResolver(createOrganiserInput), defaultValues: { name: '' } });
  const kept = useKeptForm('organiser', form);
  const make = useMutation(
    api.organiser.create.mutationOptions({
      onSuccess: async ({ organiserId }) => {
        kept.clear();
        form.reset({ name: '' });
        await queryClient.invalidateQueries(api.team.mine.queryFilter());
        router.push(`/organiser/?organiser=${organiserId}`);
      },
    }),
  );
  return (
    <form className={styles.form} noValidate onSubmit={form.handleSubmit((values) => make.mutate(values))}>
      <TextField
        label="Name of the organiser"
        hint="The club or body that runs the event."
        autoComplete="organization"
        error={form.formState.errors.name?.message}
        {...form.register('name')}
      />
      <SaveTrouble problem={make.error && problemOf(make.error)} />
      <div>
        <Button type="submit" busy={make.isPending} busyWords="Making the organiser …">
          Make the organiser
        </Button>
      </div>
    </form>
  );
}
