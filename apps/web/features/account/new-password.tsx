'use client';

import { passwordToken } from '@halfshaft/contract';
import { useState } from 'react';
import { ErrorState } from '@/components/error-state';
import { LinkButton } from '@/components/link-button';
import { LoadingState } from '@/components/loading-state';
import { Notice } from '@/components/notice';
import { PageHeader } from '@/components/page-header';
import styles from './account.module.css';
import { NewPasswordForm } from './new-password-form';
import { useHash } from './use-hash';

/** The page behind a link for whoever forgot the password. The token stands after the #, so it reaches no server log. */
export function NewPassword() {
  const token = useHash();
  const [isSet, setIsSet] = useState(false);
  if (token === null) return <LoadingState words="Reading the link …" />;
  const read = passwordToken.safeParse(token);
  return (
    <div className={styles.page}>
      <PageHeader title="New password" />
      {isSet ? (
        <>
          <Notice spoken>Your new password counts from now on. You are signed out on every device.</Notice>
          <LinkButton href="/sign-in/">Sign in</LinkButton>
        </>
      ) : read.success ? (
        <NewPasswordForm token={read.data} onSet={() => setIsSet(true)} />
      ) : (
        <ErrorState sentence={read.error.issues[0]?.message ?? 'That link is not complete.'} />
      )}
    </div>
  );
}
