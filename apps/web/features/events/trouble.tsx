'use client';

import type { Problem } from '@halfshaft/contract';
import { usePathname, useSearchParams } from 'next/navigation';
import { ErrorState } from '@/components/error-state';
import { LinkButton } from '@/components/link-button';
import { Notice } from '@/components/notice';
import { Stack } from '@/components/stack';
import { problemOf } from '@/lib/api';
import { HOME_ADDRESS, signInAddress } from './addresses';

interface LoadTroubleProps {
  error: unknown;
  onTryAgain: () => void;
  /** Nothing else stands on the page. */
  wholePage?: boolean;
}

/** In place of what could not be fetched. */
export function LoadTrouble({ error, onTryAgain, wholePage = false }: LoadTroubleProps) {
  const problem = problemOf(error);
  return (
    <ErrorState sentence={problem.message} onTryAgain={onTryAgain} wholePage={wholePage}>
      <WayOn problem={problem} />
    </ErrorState>
  );
}

/** Beside the button of a form that could not be saved. */
export function SaveTrouble({ problem }: { problem: Problem | null }) {
  if (problem === null) return null;
  return (
    <Notice kind="problem" title="Not saved" spoken>
      <Stack gap="small">
        <p>{problem.message}</p>
        <WayOn problem={problem} />
      </Stack>
    </Notice>
  );
}

/** In place of a page whose address lacks an id. */
export function BadAddress() {
  return (
    <ErrorState
      wholePage
      sentence="This address is not complete, so there is nothing to show. Choose again from the beginning."
    >
      <LinkButton href={HOME_ADDRESS}>Your teams and events</LinkButton>
    </ErrorState>
  );
}

/** In place of a page of a team one does not belong to: the same words whether it exists or not. */
export function NotYours() {
  return (
    <ErrorState
      wholePage
      sentence="This team does not exist, or it is not yours. Choose again from the beginning."
    >
      <LinkButton href={HOME_ADDRESS}>Your teams and events</LinkButton>
    </ErrorState>
  );
}

function WayOn({ problem }: { problem: Problem }) {
  const pathname = usePathname();
  const query = useSearchParams().toString();
  const here = query === '' ? pathname : `${pathname}?${query}`;
  return problem.code === 'signInNeeded' ? <LinkButton href={signInAddress(here)}>Sign in</LinkButton> : null;
}
