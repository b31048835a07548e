'use client';

import { zodResolver } from '@hookform/resolvers/zod';
import { useRouter, useSearchParams } from 'next/navigation';
import { useState } from 'react';
import { useForm } from 'react-hook-form';
import { LoadingState } from '@/components/loading-state';
import { PageHeader } from '@/components/page-header';
import { PageLink } from '@/components/page-link';
import { Sheet } from '@/components/sheet';
import { TextField } from '@/components/text-field';
import { useKeptForm } from '@/lib/keep-typed';
import { signUp, useSession } from '@/lib/session';
import { KeepVisit } from '../visit/keep-visit';
import styles from './account.module.css';
import { PASSWORD_HINT, type SignUpValues, signUpForm } from './account-fields';
import { FormEnd } from './form-end';
import { safeNext } from './safe-next';
import { SignedInAlready } from './signed-in-already';

/** Makes an account; with `?keep=visit` it goes on to keep what was worked out without one. */
export function SignUp() {
  const query = useSearchParams();
  const session = useSession();
  const isKeeping = query.get('keep') === 'visit';
  const next = safeNext(query.get('next'));

  if (session.isPending) return <LoadingState words="One moment …" />;
  const account = session.data ?? null;
  // A helper's session has no e-mail to come back with, so a team of its own needs an account first.
  if (isKeeping && account && !account.isHelper) return <KeepVisit personName={account.name} />;
  return (
    <div className={styles.page}>
      <PageHeader title="Make an account" />
      {isKeeping ? (
        <p>First the account, then a few names; what you worked out stays on this device.</p>
      ) : null}
      {account ? <SignedInAlready account={account} next={next} /> : null}
      <SignUpForm next={isKeeping ? null : next} />
      <p>
        You have an account?{' '}
        <PageLink href={`/sign-in/?next=${encodeURIComponent(isKeeping ? '/sign-up/?keep=visit' : next)}`}>
          Sign in
        </PageLink>
        .
      </p>
    </div>
  );
}

/** `next` null: the page itself goes on, once there is a session. */
function SignUpForm({ next }: { next: string | null }) {
  const router = useRouter();
  const [problem, setProblem] = useState<string | null>(null);
  const form = useForm<SignUpValues>({
    resolver: zodResolver(signUpForm),
    defaultValues: { name: '', email: '', password: '' },
  });
  const kept = useKeptForm('sign-up', form, ['password']);
  const { errors, isSubmitting } = form.formState;

  const submit = form.handleSubmit(async ({ name, email, password }) => {
    setProblem(null);
    const answer = await signUp(name, email, password);
    if (!answer.ok) return setProblem(answer.sentence);
    kept.clear();
    if (next !== null) router.replace(next);
  });

  return (
    <Sheet>
      <form className={styles.form} onSubmit={submit} noValidate>
        <TextField
          label="Your name"
          autoComplete="name"
          error={errors.name?.message}
          {...form.register('name')}
        />
        <TextField
          label="E-mail"
          type="email"
          hint="Only for signing in: no mail is sent."
          autoComplete="username"
          error={errors.email?.message}
          {...form.register('email')}
        />
        <TextField
          label="Password"
          type="password"
          hint={PASSWORD_HINT}
          autoComplete="new-password"
          error={errors.password?.message}
          {...form.register('password')}
        />
        <FormEnd problem={problem} busy={isSubmitting} busyWords="Making the account …">
          Make the account
        </FormEnd>
      </form>
    </Sheet>
  );
}
