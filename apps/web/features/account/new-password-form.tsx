'use client';

import { zodResolver } from '@hookform/resolvers/zod';
import { useState } from 'react';
import { useForm } from 'react-hook-form';
import { Sheet } from '@/components/sheet';
import { TextField } from '@/components/text-field';
import { setPassword } from '@/lib/session';
import styles from './account.module.css';
import { newPasswordForm, PASSWORD_HINT } from './account-fields';
import { FormEnd } from './form-end';

interface NewPasswordFormProps {
  token: string;
  onSet: () => void;
}

export function NewPasswordForm({ token, onSet }: NewPasswordFormProps) {
  const [problem, setProblem] = useState<string | null>(null);
  const form = useForm({ resolver: zodResolver(newPasswordForm), defaultValues: { password: '' } });
  const { errors, isSubmitting } = form.formState;

  const submit = form.handleSubmit(async ({ password }) => {
    setProblem(null);
    const answer = await setPassword(token, password);
    if (!answer.ok) return setProblem(answer.sentence);
    onSet();
  });

  return (
    <Sheet>
      <form className={styles.form} onSubmit={submit} noValidate>
        <TextField
          label="New password"
          type="password"
          hint={PASSWORD_HINT}
          autoComplete="new-password"
          error={errors.password?.message}
          {...form.register('password')}
        />
        <FormEnd problem={problem} busy={isSubmitting} busyWords="Setting the password …">
          Set the new password
        </FormEnd>
      </form>
    </Sheet>
  );
}
