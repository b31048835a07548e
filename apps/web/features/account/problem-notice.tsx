'use client';

import Link from 'next/link';
import { useEffect, useState } from 'react';
import { ErrorState } from '@/components/error-state';
import { Notice } from '@/components/notice';
import { problemOf } from '@/lib/api';
import { signInHref } from './safe-next';

/** What did not work in a form, with the way back in when the sign-in has run out. Fields tell their own problems. */
export function ProblemNotice({ error }: { error: unknown }) {
  if (error == null) return null;
  const problem = problemOf(error);
  return (
    <Notice kind="problem" spoken>
      <p>{problem.message}</p>
      {problem.code === 'signInNeeded' ? <SignInAgain /> : null}
    </Notice>
  );
}

/** The same in place of what could not be fetched. */
export function ProblemState({ error, onTryAgain }: { error: unknown; onTryAgain: () => void }) {
  const problem = problemOf(error);
  if (problem.code !== 'signInNeeded')
    return <ErrorState sentence={problem.message} onTryAgain={onTryAgain} />;
  return (
    <ErrorState sentence="This page is for those who are signed in.">
      <SignInAgain />
    </ErrorState>
  );
}

function SignInAgain() {
  const [here, setHere] = useState('/home/');
  useEffect(() => {
    const { pathname, search, hash } = window.location;
    setHere(pathname + search + hash);
  }, []);
  return <Link href={signInHref(here)}>Sign in and come back here</Link>;
}
