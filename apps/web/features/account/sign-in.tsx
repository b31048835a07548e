'use client';

import { zodResolver } from '@hookform/resolvers/zod';
import { useRouter, useSearchParams } from 'next/navigation';
import { useState } from 'react';
import { useForm } from 'react-hook-form';
import { PageHeader } from '@/components/page-header';
import { PageLink } from '@/components/page-link';
import { Sheet } from '@/components/sheet';
import { TextField } from '@/components/text-field';
import { useKeptForm } from '@/lib/keep-typed';
import { signIn, useSession } from '@/lib/session';
import { WaitingHere } from '../work/waiting-here';
import styles from './account.module.css';
import { type SignInValues, signInForm } from './account-fields';
import { FormEnd } from './form-end';
import { safeNext } from './safe-next';
import { SignedInAlready } from './signed-in-already';

export function SignIn() {
  const next = safeNext(useSearchParams().get('next'));
  const router = useRouter();
  const session = useSession();
  const [problem, setProblem] = useState<string | null>(null);
  const form = useForm<SignInValues>({
    resolver: zodResolver(signInForm),
    defaultValues: { email: '', password: '' },
  });
  const kept = useKeptForm('sign-in', form, ['password']);
  const { errors, isSubmitting, isSubmitSuccessful } = form.formState;

  const submit = form.handleSubmit(async ({ email, password }) => {
    setProblem(null);
    const answer = await signIn(email, password);
    if (!answer.ok) return setProblem(answer.sentence);
    kept.clear();
    router.replace(next);
  });

  return (
    <div className={styles.page}>
      <PageHeader title="Sign in" />
      <WaitingHere signedIn={false} />
      {session.data && !isSubmitting && !isSubmitSuccessful ? (
        <SignedInAlready account={session.data} next={next} />
      ) : null}
      <Sheet>
        <form className={styles.form} onSubmit={submit} noValidate>
          <TextField
            label="E-mail"
            type="email"
            autoComplete="username"
            error={errors.email?.message}
            {...form.register('email')}
          />
          <TextField
            label="Password"
            type="password"
            autoComplete="current-password"
            error={errors.password?.message}
            {...form.register('password')}
          />
          <FormEnd problem={problem} busy={isSubmitting} busyWords="Signing in …">
            Sign in
          </FormEnd>
        </form>
      </Sheet>
      <p>
        No account yet? <PageLink href={`/sign-up/?next=${encodeURIComponent(next)}`}>Make one</PageLink>, or{' '}
        <PageLink href="/try/">plan a service without</PageLink>.
      </p>
      <p className={styles.quiet}>
        You came by a link or a code from your team? Open it again: it needs no password. You forgot your
        password? An admin of your team can make a link on the page People with which you set a new one. If
        you have no admin to ask, whoever runs this server can give you a new one.
      </p>
    </div>
  );
}
