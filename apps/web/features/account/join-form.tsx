'use client';

import { acceptInviteInput } from '@halfshaft/contract';
import { zodResolver } from '@hookform/resolvers/zod';
import { useMutation } from '@tanstack/react-query';
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { useForm } from 'react-hook-form';
import { Sheet } from '@/components/sheet';
import { TextField } from '@/components/text-field';
import { client, problemOf, queryClient } from '@/lib/api';
import { useKeptForm } from '@/lib/keep-typed';
import { type Account, startHelperSession } from '@/lib/session';
import { eventAddress, HOME_ADDRESS } from '../events/addresses';
import styles from './account.module.css';
import { FormEnd } from './form-end';

const joinForm = acceptInviteInput.pick({ name: true });

interface JoinFormProps {
  token: string;
  account: Account | null;
}

/** A name is all it takes: without a session one is begun that needs neither e-mail nor password. */
export function JoinForm({ token, account }: JoinFormProps) {
  const router = useRouter();
  const [problem, setProblem] = useState<string | null>(null);
  const form = useForm({
    resolver: zodResolver(joinForm),
    defaultValues: { name: account && !account.isHelper ? account.name : '' },
  });
  const kept = useKeptForm('join', form);
  const accept = useMutation({
    mutationFn: (name: string) => joinTeam(token, name, account !== null),
    onSuccess: async ({ teamId, eventId }) => {
      kept.clear();
      await queryClient.invalidateQueries();
      router.replace(eventId === null ? HOME_ADDRESS : eventAddress(teamId, eventId));
    },
    onError: (error) => setProblem(error instanceof NoSession ? error.message : problemOf(error).message),
  });

  return (
    <Sheet>
      <form
        className={styles.form}
        noValidate
        onSubmit={form.handleSubmit(({ name }) => {
          setProblem(null);
          accept.mutate(name);
        })}
      >
        {account && !account.isHelper ? <p>You join with the account {account.email}.</p> : null}
        <TextField
          label="Your name"
          hint="As the team calls you: it stands beside what you do."
          autoComplete="name"
          error={form.formState.errors.name?.message}
          {...form.register('name')}
        />
        <FormEnd problem={problem} busy={accept.isPending || accept.isSuccess} busyWords="Joining …">
          Join
        </FormEnd>
      </form>
    </Sheet>
  );
}

/** Its message is a sentence for the person. */
class NoSession extends Error {}

async function joinTeam(token: string, name: string, hasSession: boolean) {
  if (!hasSession) {
    const answer = await startHelperSession();
    if (!answer.ok) throw new NoSession(answer.sentence);
  }
  return client.invite.accept.mutate({ token, name });
}
