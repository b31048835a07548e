'use client';

import { addPersonInput } from '@halfshaft/contract';
import { zodResolver } from '@hookform/resolvers/zod';
import { useMutation } from '@tanstack/react-query';
import { useForm } from 'react-hook-form';
import { Button } from '@/components/button';
import { Sheet } from '@/components/sheet';
import { TextField } from '@/components/text-field';
import { api, problemOf, queryClient } from '@/lib/api';
import { useKeptForm } from '@/lib/keep-typed';
import { SaveTrouble } from '../events/trouble';
import styles from './people.module.css';

const personForm = addPersonInput.pick({ name: true });

/** Someone without a phone or account, so that others can record for them. */
export function AddPerson({ teamId }: { teamId: string }) {
  const form = useForm({ resolver: zodResolver(personForm), defaultValues: { name: '' } });
  const kept = useKeptForm(`person.${teamId}`, form);
  const add = useMutation(
    api.people.add.mutationOptions({
      onSuccess: async () => {
        kept.clear();
        form.reset({ name: '' });
        await queryClient.invalidateQueries(api.people.list.queryFilter({ teamId }));
      },
    }),
  );
  return (
    <Sheet title="Name someone without an account">
      <form
        className={styles.form}
        noValidate
        onSubmit={form.handleSubmit(({ name }) => add.mutate({ teamId, name }))}
      >
        <TextField
          label="Name"
          hint="Others then record for them: who did it, and who wrote it down."
          autoComplete="off"
          error={form.formState.errors.name?.message}
          {...form.register('name')}
        />
        <SaveTrouble problem={add.error && problemOf(add.error)} />
        <div>
          <Button type="submit" busy={add.isPending} busyWords="Adding …">
            Add this person
          </Button>
        </div>
        <p role="status">{add.isSuccess ? `${add.variables.name} is in the list.` : ''}</p>
      </form>
    </Sheet>
  );
}
